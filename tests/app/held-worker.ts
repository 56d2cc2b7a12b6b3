/** A worker that answers when the test lets it. */
export class HeldWorker<Question> extends EventTarget {
  readonly asked: Question[] = [];
  ended = false;

  postMessage(question: Question): void {
    this.asked.push(question);
  }
  terminate(): void {
    this.ended = true;
  }
  hear(data: unknown): void {
    if (!this.ended) this.dispatchEvent(new MessageEvent('message', { data }));
  }
}
