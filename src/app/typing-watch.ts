type TextField = HTMLInputElement | HTMLTextAreaElement;

/** A field that takes letters, and has an undo of its own for them. */
const isTextField = (target: EventTarget | null): target is TextField =>
  target instanceof HTMLTextAreaElement ||
  (target instanceof HTMLInputElement && /^(text|search|url|tel|email|number|password)$/.test(target.type));

interface Typing {
  readonly field: TextField;
  /** Its text when it got the focus, and after the last keystroke. */
  readonly before: string;
  readonly now: string;
  /** The last change of it was the browser's own undo or redo. */
  readonly wayBack: boolean;
}

export interface TypingWatch {
  /** Whether the browser's own undo or redo has something to do in this field. */
  readonly takes: (act: 'undo' | 'redo', target: EventTarget | null) => boolean;
  readonly end: () => void;
}

/**
 * Watches what is typed into the field with the focus. A text that an arrow, a mend or a spelling has put there is not typing any more.
 * `onWayBack` is told after the browser's own undo has been heard by the page.
 */
export function typingWatch(onWayBack: () => void): TypingWatch {
  let typing: Typing | null = null;
  const onFocus = ({ target }: Event) => {
    typing = isTextField(target)
      ? { field: target, before: target.value, now: target.value, wayBack: false }
      : null;
  };
  // Before the page hears of it, which may spell the text again.
  const onType = (event: Event) => {
    if (typing === null || typing.field !== event.target) return;
    const wayBack = event instanceof InputEvent && event.inputType.startsWith('history');
    typing = { ...typing, now: typing.field.value, wayBack };
  };
  const afterType = (event: Event) => {
    if (event instanceof InputEvent && event.inputType === 'historyUndo') onWayBack();
  };
  window.addEventListener('focusin', onFocus);
  window.addEventListener('input', onType, { capture: true });
  window.addEventListener('input', afterType);
  return {
    takes: (act, target) =>
      typing !== null &&
      typing.field === target &&
      typing.field.value === typing.now &&
      (act === 'undo' ? typing.now !== typing.before : typing.wayBack),
    end() {
      window.removeEventListener('focusin', onFocus);
      window.removeEventListener('input', onType, { capture: true });
      window.removeEventListener('input', afterType);
    },
  };
}
