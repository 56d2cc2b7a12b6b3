import { HERE } from '../../src/worker/hear-worker';

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
  /** Its script has come. */
  come(): void {
    this.hear(HERE);
  }
  hear(data: unknown): void {
    if (!this.ended) this.dispatchEvent(new MessageEvent('message', { data }));
  }
}
