import { isMappingProblem, mappingSentence, readMapping } from '../../workbook/mapping-file';
import type { Mapping } from '../../workbook/tables';
import { parseJson } from './json-file';
import { CommandProblem } from './status';

/** Which column holds what, as a person writes it or the pane saves it. */
export const readMappingFile = async (path: string): Promise<Mapping> => {
  const mapping = readMapping(await parseJson(path, 'an object in braces with one entry per table'));
  if (isMappingProblem(mapping)) throw new CommandProblem(`${path}: ${mappingSentence(mapping)}`);
  return mapping;
};
