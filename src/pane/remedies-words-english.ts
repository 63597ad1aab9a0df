import type { RemediesWords } from './remedies-words';

export const english: RemediesWords = {
  title: 'Remedies and state',
  note: 'broken formulas, values, report',
  hintsTitle: 'First steps',
  hints: [
    'Type =CHAN. in a cell: the list of functions opens there.',
    'Press “Check channels” below: verdicts are written beside the list, and nothing of yours is changed.',
    'Nothing leaves this machine: the workbook is read and calculated here.',
  ],
  dismiss: 'Got it',
  showHints: 'Show first steps',
  namesTitle: 'Formulas that show #NAME?',
  namesText: 'Formulas entered before the add-in was loaded, or kept by another program, must be written once more.',
  find: 'Look for them',
  noneFound: 'No formula of ours shows #NAME?.',
  found: (count, one) => `${count} ${one ? 'formula shows' : 'formulas show'} #NAME? and will be written again.`,
  foundPerhaps: (count, one) =>
    `${count} more ${one ? 'has' : 'have'} a name like ours under another prefix; it may belong to another add-in.`,
  foundText: (count, one) => `${count} ${one ? 'text reads' : 'texts read'} like a formula of ours.`,
  andMore: (count) => `and ${count} more`,
  writeAgain: (count) => `Write ${count} again`,
  include: (count, one) => (one ? 'Include this one' : `Include these ${count}`),
  rewritten: (working, count) => `${working} of ${count} work now. One undo takes this back.`,
  failing: {
    'unknown name': 'still unknown: the functions are not loaded; close and open the pane, then try again',
    'other error': 'the name is known now, but the formula gives an error',
    'not taken': 'the cell did not take the formula',
  },
  freezeTitle: 'Values instead of formulas',
  freezeText: 'For readers without the add-in. “Check channels” brings the formulas of the check columns back.',
  scope: 'Which cells',
  checkColumns: 'the check columns',
  everyFormula: 'every cell with a function of ours',
  look: 'Count them',
  freezeOffer: (count, one) =>
    `${count} ${one ? 'formula' : 'formulas'} would become exact values; looks and notes stay.`,
  freeze: 'Make them values',
  staying: (count, why) =>
    ({
      error: `${count} with an error stay formulas.`,
      'fills cells': `${count} may fill several cells and stay formulas.`,
      'reads as a formula': `${count} give a text that begins with “=” and stay formulas.`,
    })[why],
  frozen: (count, one) =>
    `${count} ${one ? 'formula is a value' : 'formulas are values'} now. One undo takes this back.`,
  cancel: 'Cancel',
  stateTitle: 'State of the add-in',
  stateText: 'For a question to whoever looks after the add-in. No names, no paths, no cell contents.',
  showState: 'Show state',
  copy: 'Copy report',
  copied: 'Copied.',
  copyByHand: 'Copying is not allowed here: the text is selected, press Ctrl+C.',
  reportLabel: 'Report',
  stale: (stale) => {
    if (stale.kind === 'older than the workbook')
      return `A newer version (${stale.writtenBy}) wrote into this workbook. Close the program and open it again to load that version; until then some results may differ.`;
    if (stale.kind === 'unknown functions')
      return `This version does not know: ${stale.names.join(', ')}. Close the program and open it again; if it stays so, ask for the newer version.`;
    return `The list of functions (${stale.listed}) is not that of this version (${stale.known}): an old copy is kept. Close the program and open it again; the copy is renewed within a day.`;
  },
  state: {
    version: 'Version',
    host: 'Runs in',
    functions: (known, total) => `Functions: ${known ?? 'an unknown number'} of ${total} known to the program`,
    runtime: 'Functions run',
    runtimes: {
      shared: 'together with the pane',
      separate: 'apart from the pane',
      page: 'in this page',
      none: 'nowhere',
    },
    calculation: 'Calculation',
    separators: 'Separators',
    formulas: 'Formulas of ours',
    errors: 'Errors among them',
    noErrors: 'none',
    writtenBy: 'Newest version that wrote here',
    has: 'present',
    lacks: 'missing',
    costs: {
      separators: 'the decimal separator is not known',
      mergedAreas: 'merged cells are not seen before writing',
      tableResize: 'check columns stand beside a table, not in it',
      changeTrigger: 'events are off while the add-in writes',
      notes: 'no notes on verdicts; the column Reason says the same',
      oneUndo: 'an action may take several undo steps, or none',
    },
  },
};
