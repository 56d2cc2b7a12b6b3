/** Tells once, in words, if a worker cannot be fetched, falls over, or says what cannot be read: it will answer nothing more. */
export function hearFall(worker: Worker, fell: (why: Error) => void): void {
  const hear = (event: Event) => {
    event.preventDefault();
    fell(new Error('message' in event && typeof event.message === 'string' ? event.message : event.type));
  };
  worker.addEventListener('error', hear);
  worker.addEventListener('messageerror', hear);
}
