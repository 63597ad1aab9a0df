import type { IMutationInfo } from '@univerjs/core';
import { SetRangeValuesMutation } from '@univerjs/sheets';
import type { Services } from './host';

const own = new WeakSet<object>();
/** True for the parameters of a change that we made, so that listeners can tell it from a person's. */
export const isOwnChange = (params: object | undefined): boolean => params !== undefined && own.has(params);

/** The grid keeps and edits what it is given, except cells, so the undo list must hold its own copy. */
const copy = ({ id, params }: IMutationInfo): IMutationInfo => ({
  id,
  params: id === SetRangeValuesMutation.id ? { ...params } : (structuredClone(params) as object),
});

/** One user action: changes run one by one, and all of them are one step on the undo list. */
export class Action {
  private readonly redos: IMutationInfo[] = [];
  private readonly undos: IMutationInfo[] = [];

  constructor(
    readonly services: Services,
    readonly unitId: string,
  ) {}

  /** `undos` must lead back exactly, in their own order. */
  run(mutation: IMutationInfo, undos: readonly IMutationInfo[]): void {
    this.redos.push(copy(mutation));
    this.undos.unshift(...undos.map(copy));
    own.add(mutation.params as object);
    this.services.commands.syncExecuteCommand(mutation.id, mutation.params);
  }

  finish(): void {
    if (this.redos.length === 0) return;
    this.services.undo.pushUndoRedo({
      unitID: this.unitId,
      redoMutations: this.redos,
      undoMutations: this.undos,
    });
  }

  /** Takes back what has run so far; nothing stays on the undo list. */
  abandon(): void {
    for (const { id, params } of this.undos) {
      own.add(params as object);
      this.services.commands.syncExecuteCommand(id, params);
    }
  }
}
