import { failure, outcome, type Outcome } from '../../core/issue';

/** "a; b" as some of the known words, whatever their case; blank: undefined. */
export const pickedWords = <Word extends string>(
  arg: string,
  text: string | undefined,
  choices: readonly Word[],
): Outcome<readonly Word[] | undefined> => {
  if (text === undefined || text.trim() === '') return outcome(undefined);
  const picked: Word[] = [];
  for (const given of text.split(';').map((word) => word.trim())) {
    if (given === '') continue;
    const word = choices.find((choice) => choice.toLowerCase() === given.toLowerCase());
    if (word === undefined) return failure({ code: 'unknown-choice', arg, given, choices });
    picked.push(word);
  }
  return outcome(picked);
};
