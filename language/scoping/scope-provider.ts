/** Finds what names mean, for definition, references and rename; the model resolves them itself and reports what is unknown. */
import type {
  AstNode,
  AstNodeDescription,
  AstNodeDescriptionProvider,
  LangiumCoreServices,
  ReferenceInfo,
  Scope,
  ScopeProvider,
  Stream,
} from 'langium';
import { AstUtils, EMPTY_SCOPE, stream, WorkspaceCache } from 'langium';
import * as ast from '../grammar/generated/ast.ts';
import type { UsableFiles } from '../system/read/uses.ts';
import { type FileNames, fileNames } from './file-names.ts';
import { membersOf } from './members.ts';

type Named = ReadonlyMap<string, AstNode>;

export class CircuitScopeProvider implements ScopeProvider {
  private readonly descriptions: AstNodeDescriptionProvider;
  private readonly files: () => UsableFiles;
  private readonly names: WorkspaceCache<AstNode, FileNames>;
  private readonly members: WorkspaceCache<AstNode, Named>;

  constructor(services: LangiumCoreServices, files: () => UsableFiles) {
    this.descriptions = services.workspace.AstNodeDescriptionProvider;
    this.files = files;
    this.names = new WorkspaceCache(services.shared);
    this.members = new WorkspaceCache(services.shared);
  }

  getScope(context: ReferenceInfo): Scope {
    const named = this.namedAt(context);
    return named === undefined ? EMPTY_SCOPE : new NamedScope(named, this.descriptions);
  }

  private namedAt({ container, property, reference }: ReferenceInfo): Named | undefined {
    if (ast.isReference(container)) {
      const index = container.segments.findIndex(
        ({ $refNode }) => $refNode !== undefined && $refNode === reference.$refNode,
      );
      const before = container.segments[(index < 0 ? container.segments.length : index) - 1];
      if (before === undefined) return this.namesAt(container)?.parts;
      const { ref } = before;
      return ref && this.membersIn(ref);
    }
    if (ast.isPart(container))
      return property === 'stock' ? this.namesAt(container)?.stocks : this.namesAt(container)?.places;
    if (ast.isMirror(container))
      return property === 'source' ? this.namesAt(container)?.parts : this.namesAt(container)?.places;
    if (ast.isPlaceDeclaration(container)) return this.namesAt(container)?.places;
    if (ast.isUse(container))
      return container.path === undefined ? undefined : this.namesAt(container)?.lentBy(container.path);
    if (ast.isPath(container)) return portsOf(this.membersIn(container.$container));
    return undefined;
  }

  private namesAt(node: AstNode): FileNames | undefined {
    const root = AstUtils.findRootNode(node);
    const uri = root.$document?.uri.toString();
    if (!ast.isFile(root) || uri === undefined) return undefined;
    return this.names.get(root, () => fileNames(root, uri, this.files()));
  }

  private membersIn(node: AstNode): Named {
    return this.members.get(node, () => membersOf(node));
  }
}

function portsOf(members: Named): Named {
  return new Map([...members].filter(([, member]) => ast.isPort(member)));
}

/** Describes a node only when somebody asks for its name. */
class NamedScope implements Scope {
  private readonly named: Named;
  private readonly descriptions: AstNodeDescriptionProvider;

  constructor(named: Named, descriptions: AstNodeDescriptionProvider) {
    this.named = named;
    this.descriptions = descriptions;
  }

  getElement(name: string): AstNodeDescription | undefined {
    const node = this.named.get(name);
    return node && this.descriptions.createDescription(node, name);
  }

  getElements(name: string): Stream<AstNodeDescription> {
    const element = this.getElement(name);
    return stream(element === undefined ? [] : [element]);
  }

  getAllElements(): Stream<AstNodeDescription> {
    return stream([...this.named].map(([name, node]) => this.descriptions.createDescription(node, name)));
  }
}
