/** What the user has set for the server, kept at hand because diagnostics cannot wait for an answer. */
import type { LangiumSharedCoreServices } from 'langium';
import type { State } from '../../language/index.ts';

export interface Settings {
  /** Which of the two circuits diagnostics and hover speak of. */
  circuit(): State;
}

/** Reads the settings when the window has them and whenever they change; `changed` runs behind each change. */
export function followSettings(shared: LangiumSharedCoreServices, changed: () => void): Settings {
  const kept: { circuit: State } = { circuit: 'planned' };
  const take = (section: unknown): void => {
    const circuit = circuitIn(section);
    if (circuit === kept.circuit) return;
    kept.circuit = circuit;
    changed();
  };
  const { ConfigurationProvider } = shared.workspace;
  ConfigurationProvider.onConfigurationSectionUpdate(({ section, configuration }) => {
    if (section === 'linewright') take(configuration);
  });
  void ConfigurationProvider.ready.then(
    async () => take({ circuit: await ConfigurationProvider.getConfiguration('linewright', 'circuit') }),
    () => undefined,
  );
  return { circuit: () => kept.circuit };
}

function circuitIn(section: unknown): State {
  const isFound =
    typeof section === 'object' && section !== null && 'circuit' in section && section.circuit === 'found';
  return isFound ? 'found' : 'planned';
}
