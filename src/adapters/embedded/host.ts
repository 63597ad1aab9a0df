import {
  ICommandService,
  IUndoRedoService,
  IUniverInstanceService,
  UniverInstanceType,
  type Injector,
  type Nullable,
  type Univer,
  type Workbook,
  type Worksheet,
} from '@univerjs/core';
import type { FUniver } from '@univerjs/core/lib/facade';
import { HostProblem } from '../../workbook/port';

/** A spreadsheet with or without a page around it. */
export interface Host {
  readonly univer: Univer;
  readonly api: FUniver;
}

/** The services of the spreadsheet that the port is made of, and the workbook that is open now. */
export class Services {
  readonly injector: Injector;
  readonly commands: ICommandService;
  readonly undo: IUndoRedoService;
  private readonly instances: IUniverInstanceService;

  constructor(readonly host: Host) {
    this.injector = host.univer.__getInjector();
    this.commands = this.injector.get(ICommandService);
    this.undo = this.injector.get(IUndoRedoService);
    this.instances = this.injector.get(IUniverInstanceService);
  }

  /** Null while one workbook takes the place of another. */
  openWorkbook(): Nullable<Workbook> {
    return this.instances.getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  }

  workbook(): Workbook {
    const found = this.openWorkbook();
    if (!found) throw new HostProblem('No workbook is open.', 'not-found');
    return found;
  }

  sheet(name: string): Worksheet {
    const found = this.workbook().getSheetBySheetName(name);
    if (!found) throw new HostProblem(`This workbook has no sheet "${name}".`, 'not-found');
    return found;
  }
}
