/** The line under the tools that says why the picture is not of the text as it is now. */
export interface NoticeContent {
  readonly text: string;
  /** What the button says that leads to the place in the text; none without a place. */
  readonly go?: string;
}

export interface Notice {
  readonly show: (content: NoticeContent | undefined) => void;
}

export interface NoticeElements {
  readonly box: HTMLElement;
  readonly text: HTMLElement;
  readonly go: HTMLElement;
}

export function createNotice({ box, text, go }: NoticeElements, onGo: () => void): Notice {
  go.addEventListener('click', onGo);
  return {
    show: (content) => {
      box.hidden = content === undefined;
      // A screen reader would say the same sentence again with every key that is typed.
      if (text.textContent !== (content?.text ?? '')) text.textContent = content?.text ?? '';
      go.hidden = content?.go === undefined;
      go.textContent = content?.go ?? '';
    },
  };
}
