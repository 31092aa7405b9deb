/** Which key does what in the preview. No DOM. */
export type Direction = 'left' | 'right' | 'up' | 'down';

export type KeyAction =
  | { readonly kind: 'zoomIn' | 'zoomOut' | 'fullSize' | 'fit' | 'toEditor' | 'toSource' }
  | { readonly kind: 'move'; readonly direction: Direction };

export interface Key {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
}

const actions: ReadonlyMap<string, KeyAction> = new Map<string, KeyAction>([
  ['+', { kind: 'zoomIn' }],
  ['=', { kind: 'zoomIn' }],
  ['-', { kind: 'zoomOut' }],
  ['_', { kind: 'zoomOut' }],
  ['0', { kind: 'fullSize' }],
  ['f', { kind: 'fit' }],
  ['F', { kind: 'fit' }],
  ['Escape', { kind: 'toEditor' }],
  ['Enter', { kind: 'toSource' }],
  ['ArrowLeft', { kind: 'move', direction: 'left' }],
  ['ArrowRight', { kind: 'move', direction: 'right' }],
  ['ArrowUp', { kind: 'move', direction: 'up' }],
  ['ArrowDown', { kind: 'move', direction: 'down' }],
]);

/** Undefined for a key that is not ours: it goes on to the editor, as does everything with a modifier. */
export function actionOf({ key, ctrlKey, metaKey, altKey }: Key): KeyAction | undefined {
  return ctrlKey || metaKey || altKey ? undefined : actions.get(key);
}
