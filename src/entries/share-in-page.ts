// The customer copy for a page: a chunk that loads on the first press.
import { browserCodec } from '../adapters/xlsx/codec-browser';
import { copyOfFile } from '../adapters/xlsx/share/copy-of-file';
import type { Language } from '../core/language';
import { FUNCTIONS } from '../functions/index';
import type { ShareChoices } from '../workbook/share/choices';

const FUNCTION_NAMES = FUNCTIONS.map(({ name }) => name);

export const shareInPage = (bytes: Uint8Array, choices: ShareChoices, language: Language) =>
  copyOfFile(bytes, { codec: browserCodec, functionNames: FUNCTION_NAMES }, choices, language);
