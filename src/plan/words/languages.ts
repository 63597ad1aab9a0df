import { english } from './english';
import { french } from './french';
import { german } from './german';
import { italian } from './italian';
import type { Lexicon } from './lexicon';
import { spanish } from './spanish';

export const LANGUAGES: readonly Lexicon[] = [english, german, french, spanish, italian];
