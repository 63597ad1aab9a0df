export const USAGE = `channelwright: plan vibration measurement channels and prove row by row that they hold.

  channelwright check PLAN…      check channel plans: workbooks (.xlsx, .xlsm), JSON plans, or folders of workbooks
      -o, --output OUT           write the checked workbook to OUT (a file, or an existing folder for several plans)
      --in-place                 write into the workbook itself; the old one is kept beside it as NAME.before-N.xlsx
      --values                   write values in place of formulas, for readers without the add-in
      --json                     print numbers, verdicts and reasons as JSON
      --report FILE              write the report to FILE as well: a page to print (.html), plain text (.txt) or Markdown
      --language LANG            of the report, the notes and the summary sheet: en, de or fr
      --paper A4                 of the page: A4, A3 or letter; --all-plots draws every channel, not the open ones alone
      --sheet NAMES              add a sheet for each of these channels (names with commas): numbers, equations, plots
      --plan-notes               fill the sheet of notes: assumptions taken, readings made, revision; your lines stay
      --mapping FILE             say which column holds what, as JSON
      --list SHEET               a sheet of the channel list (again for each that it is spread over); --lists all: every one
      --stock FILE               take the sensors from FILE, or from this sheet of the plan, in any shape: they are laid out
                                 on a sheet of their own, which the written workbook keeps
  channelwright choose PLAN      rank the sensor list of one plan for its channels; where nothing fits, say what would help
      --channel NAME             only this channel (may be given again); --group PART: only this structure part
      --top N                    how many types to show (5); --order margin, mass or stock
      --free                     let mounts, cables and inputs change that the rows name
      --together                 one type for all of these channels: how many of them it passes for, worst channel
      --language LANG, --json, --mapping FILE, --list SHEET, --lists all, --stock FILE
  channelwright assign PLAN      give the channels of one plan sensors from its sensor list, proven to be the best choice
      -o, --output OUT           write a copy with the sensors filled in, and check it; --parts: mounts, cables, inputs too
      --allow-warn               take types whose verdict is WARN where none PASSes; --allow-incomplete likewise
      --pinned NAMES             channels that keep their sensor: names with commas, or "filled" for all that have one
      --spare 5%                 keep back this share of each type, at least one
      --roving                   structure parts are runs one after the other; sensors move along
      --inputs "IEPE 24, charge 8"   input channels there are; IEPE+voltage for inputs that take either
      --test-end 2027-03-31      leave out pieces whose calibration is not known to last that long; without it
                                 those due before the last Run end of the list
      --time 60                  seconds for the search; then the best so far is given, with how far off it may be
      --language LANG, --json, --mapping FILE, --list SHEET, --lists all, --stock FILE
  channelwright compare OLD NEW  tell what changed between two revisions of a plan: channels, verdicts and why, lists, limits
      --no-renames               take a channel with another name for another channel, though its point is the same
      --report FILE.md           write it to FILE as well, as Markdown
      --language LANG, --json, --mapping FILE, --list SHEET, --lists all, --stock FILE (all of both plans)
  channelwright export PLAN      write the plan for other programs
      -o, --output FILE          FILE.csv: channels in the documented units, numbers, verdicts, reasons;
                                 FILE.json: the whole plan, which check reads to the same result; --replace an existing file
      --language LANG            of a CSV file's headings and reasons, and how its numbers are written
      --separator semicolon      comma, semicolon or tab; --decimal comma: point or comma
      --mapping FILE, --list SHEET, --lists all, --stock FILE
  channelwright share PLAN       write a copy of one plan for a customer, who needs no add-in to read it
      -o, --output OUT.xlsx      where; without it, only what is usually not for a customer is listed. --replace
      --leave-out NAME           leave this out (may be given again): SHEET, SHEET!HEADING, HEADING, or "proposed"
      --language LANG            of headings, reasons, notes and overview; --paper A4, A3 or Letter where none is set
      --values                   your formulas become values as well; --protect: lock sheets against accidents
      --drop-notes               leave out notes of yours on cells
      --keep-links, --keep-people   keep links to other files and data; names of authors
      --title, --subject, --revision, --date, --prepared, --checked TEXT   properties and head of the overview
      --mapping FILE, --list SHEET, --lists all, --stock FILE (the copy holds the sheet on which sensors are laid out)
  channelwright take-back PLAN RETURNED   list what a copy that came back has otherwise than the plan, cell by cell
      --all                      take every cell but those with a formula, changed on both sides or of a renamed channel
      --channel NAME, --field NAME   take these (each may be given again; a field by key, title or heading); where both
                                 are named, formulas and conflicts are taken too
      --sent COPY                the copy as it left: tells the customer's changes from yours, and finds conflicts
      -o, --output OUT, --in-place   where the taken cells are written; without a choice nothing is
      --language LANG, --json, --mapping FILE, --list SHEET, --lists all
  channelwright eval FORMULA…    work out worksheet formulas (or one per line of the input); --json
  channelwright functions        list the worksheet functions; --json for all there is to know of them
      --language LANG            describe them in en, de or fr; names stay as they are
  channelwright template FILE    write an empty plan workbook
  channelwright help             this page; --version for the version

Without -o or --in-place nothing is written. A workbook keeps everything that is not ours.
Exit status of check: 0 every channel PASS or WARN, 1 something FAILs, 2 something is INCOMPLETE (rows taken together
count as well), 65 a plan cannot be read, 64 the command was not understood.

Of choose: the same for the best type of each channel. Of export: 0 when the file was written.
Of compare: 0 nothing changed, 1 something changed, whatever the verdicts are; 64 and 65 as above.
Of take-back: 0 when the copy could be read, and written what was chosen.

In a CSV file a text that a spreadsheet program could take for a formula has an apostrophe in front: it begins with
= + - @ (narrow or wide), a tab, a line end or an apostrophe. Take one apostrophe away to have the text as it was.

A mapping names a table, and for each of its fields the heading of a column (or null for none):
  {"channels": {"sheet": "Test list", "headingRow": 4,
                "fields": {"levelHigh": {"heading": "A max", "unit": "m/s²", "statistic": "peak"}, "remarks": null}}}
`;

/** The part of the help for one command, from the line with its name to the next. */
export const usageOf = (command: string): string => {
  const lines = USAGE.split('\n');
  const first = lines.findIndex((line) => line.startsWith(`  channelwright ${command} `));
  const length = lines.slice(first + 1).findIndex((line) => !line.startsWith('      '));
  return `${lines.slice(first, first + 1 + length).join('\n')}\n`;
};
