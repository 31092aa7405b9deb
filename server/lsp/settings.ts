/** What the user has set for the server, kept at hand because diagnostics cannot wait for an answer. */
import type { LangiumSharedCoreServices } from 'langium';
import type { State } from '../../language/index.ts';

export interface Settings {
  /** Which of the two circuits diagnostics and hover speak of. */
  circuit(): State;
  /** Whether cut lengths stand behind the names of runs. */
  inlayLengths(): boolean;
  /** Whether links to the sheets stand over a file. */
  sheetLens(): boolean;
  /** Runs behind each change of what is shown in the text, other than of the circuit. */
  onChange(shown: () => void): void;
}

interface Kept {
  readonly circuit: State;
  readonly inlayLengths: boolean;
  readonly sheetLens: boolean;
}

/** Reads the settings when the window has them and whenever they change; `judgeAgain` runs behind a change of the circuit. */
export function followSettings(shared: LangiumSharedCoreServices, judgeAgain: () => void): Settings {
  let kept: Kept = { circuit: 'planned', inlayLengths: true, sheetLens: true };
  const listeners: (() => void)[] = [];
  const take = (section: unknown): void => {
    const before = kept;
    kept = read(section);
    if (kept.circuit !== before.circuit) judgeAgain();
    if (kept.inlayLengths !== before.inlayLengths || kept.sheetLens !== before.sheetLens) {
      for (const tell of listeners) tell();
    }
  };
  const { ConfigurationProvider } = shared.workspace;
  ConfigurationProvider.onConfigurationSectionUpdate(({ section, configuration }) => {
    if (section === 'linewright') take(configuration);
  });
  const asked = (name: keyof Kept): Promise<unknown> => ConfigurationProvider.getConfiguration('linewright', name);
  void ConfigurationProvider.ready.then(
    async () =>
      take({
        circuit: await asked('circuit'),
        inlayLengths: await asked('inlayLengths'),
        sheetLens: await asked('sheetLens'),
      }),
    () => undefined,
  );
  return {
    circuit: () => kept.circuit,
    inlayLengths: () => kept.inlayLengths,
    sheetLens: () => kept.sheetLens,
    onChange: (tell) => listeners.push(tell),
  };
}

/** Whatever is not set, or to something else than can be, is as usual. */
function read(section: unknown): Kept {
  const said = (name: keyof Kept): unknown =>
    typeof section === 'object' && section !== null ? Reflect.get(section, name) : undefined;
  return {
    circuit: said('circuit') === 'found' ? 'found' : 'planned',
    inlayLengths: said('inlayLengths') !== false,
    sheetLens: said('sheetLens') !== false,
  };
}
