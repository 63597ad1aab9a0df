import type { HelpWords } from './help-words';
import { limitZones } from './limit-zones';

const zones = limitZones(false);

export const ENGLISH: HelpWords = {
  title: 'Channelwright help',
  lead: [
    'Channelwright checks every row of a list of vibration channels: dynamic range, mass loading, thermal deviation and usable frequency span. It writes its results as ordinary formulas beside your list and touches nothing else.',
  ],
  start: {
    heading: 'Start',
    steps: [
      'Open your channel list in Excel and choose Plan channels on the Home tab, or open it in [the workbench](workbench.html), which needs no Excel.',
      'Look at Columns as read in the pane. Choose another column where one was misread; what is not sure is asked, never guessed.',
      'Press Check channels. Failing rows come first, each with number, limit and what would help. One undo takes everything back.',
      'Edit cells: verdicts follow by themselves. Worksheet functions alone: type `=CHAN.` in a cell.',
    ],
  },
  verdicts: {
    heading: 'Verdicts',
    columns: ['Check', 'Number', 'PASS', 'WARN', 'FAIL'],
    rows: [
      ['Level, low end', 'signal to noise of the smallest level', ...zones.noise],
      ['Level, high end', 'headroom over the largest peak', ...zones.headroom],
      ['Mass, survey and shock', 'added mass over local effective mass', ...zones.survey],
      ['Mass, modal', 'the same', ...zones.modal],
      [
        'Thermal',
        'largest deviation over the range',
        `≤ ${zones.thermal}`,
        `within ${zones.thermal} once the middle is corrected`,
        'else, or beyond a part’s limit',
      ],
      ['Frequency', 'needed band in the usable span', `inside ±${zones.span[0]}`, `inside ±${zones.span[1]}`, 'else'],
    ],
    after: [
      'INCOMPLETE means that something needed is not known; the reason names it. A missing value never passes. A row’s verdict is the worst of its four.',
      'These limits are common practice, no standard. A sheet of limits in your workbook replaces them.',
    ],
  },
  errors: {
    heading: 'Error values',
    points: [
      '`#N/A` – something needed is missing or lies beyond the data.',
      '`#NUM!` – there is no such value, for example an empty span.',
      '`#VALUE!` – a cell could not be read or is out of bounds; Excel’s message says which argument, what was read and what was expected.',
      '`#NAME?` – the add-in is not loaded: open its pane, then calculate again with Ctrl+Alt+F9; formulas that stay so are written again under Remedies and state.',
    ],
  },
  units: {
    heading: 'Units',
    text: [
      'A bare number is in the unit stated for the argument. A text may carry any unit of the same quantity, such as "15 m/s²". The argument decides whether g is standard gravity or gram. Text that can mean two things is refused with both readings.',
    ],
    columns: ['Quantity', 'Unit'],
  },
  numbers: {
    heading: 'Where the numbers come from',
    points: [
      'Every function states its equation, where it holds, and its source: a standard, a book, a derivation, or “common practice, no source”. “From memory” means that the page was not read again.',
      'Every function has worked examples that were computed without this program. [The examples workbook](examples.xlsx) holds all of them as live formulas beside the expected values and counts how many agree.',
    ],
  },
  cautions: {
    heading: 'Cautions',
    text: [
      'A planning aid, not a protective function; no verdict releases a test. Hot parts, shakers, adhesives, heights, lasers, chambers and lead ceramics can hurt people. Local rules and licensed practice always come first.',
      'A test controlled by a single accelerometer can run away when that sensor is lost: the shaker is driven to full power.',
    ],
  },
  privacy: {
    heading: 'Privacy',
    text: [
      'No account, no telemetry, no server of ours. Calculations run in Excel or in your browser. The pages ask only for their own files, and inside Excel for Microsoft’s Office.js, which Microsoft requires.',
    ],
  },
  install: 'Installing, upgrading and removing: [see this page](install.html).',
  functions: {
    heading: 'Worksheet functions',
    text: ['Square brackets mark arguments that may be left out. Limits are in the unit of the argument.'],
    index: 'All functions',
    arguments: 'Arguments',
    result: 'Result',
    valid: 'Valid',
    source: 'Source',
    examples: 'Examples',
    ifBlank: 'if blank',
    needed: 'needed',
    families: {
      'level and dynamic range': 'Level and dynamic range',
      'mass loading': 'Mass loading',
      thermal: 'Thermal',
      'frequency span': 'Frequency span',
      trust: 'Trust',
      verdict: 'Verdict',
      choosing: 'Choosing',
      'text and units': 'Text and units',
    },
  },
};
