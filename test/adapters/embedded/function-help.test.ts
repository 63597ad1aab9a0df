import { describeArgument } from '../../../src/adapters/embedded/function-help';
import { functionDescriptions } from '../../../src/adapters/embedded/functions';
import { functionByName } from '../../../src/functions/index';
import { loadWording } from '../../../src/functions/words/load';

const helpOn = async (name: string, language: 'en' | 'de' | 'fr') =>
  functionDescriptions([functionByName(name)!], await loadWording(language))[0]!;

describe('the help of the grid', () => {
  it('speaks German on an argument: what it is, its unit, and what stands in for it', async () => {
    const help = await helpOn('NOISE.INPUT', 'de');
    expect(help).toMatchObject({
      functionName: 'CHAN.NOISE.INPUT',
      abstract:
        'Effektivwert des Rauschens eines Analysatoreingangs im ausgewerteten Band, als Beschleunigung am Aufnehmer.',
    });
    const detail = (name: string) => help.functionParameter.find((parameter) => parameter.name === name)?.detail;
    expect(detail('sampleRate')).toBe('Abtastrate, für die der Dynamikumfang gilt. In Hz.');
    expect(detail('lineSpacing')).toMatch(/^Linienabstand, .* In Hz\. Darf fehlen\.$/);
  });

  it('keeps names, examples and what is needed in every language', async () => {
    const fixed = async (language: 'en' | 'de' | 'fr') => {
      const help = await helpOn('MASS.LEVEL', language);
      return help.functionParameter.map(({ name, example, require, repeat }) => [name, example, require, repeat]);
    };
    expect(await fixed('de')).toEqual(await fixed('en'));
    expect(await fixed('fr')).toEqual(await fixed('en'));
  });

  it('types numbers and choices as the formulas of the grid are typed', () => {
    const say = (text: string) => text;
    const share = { unit: '%', default: 0.5, text: 'X.' } as const;
    const side = { kind: 'choice', choices: ['left', 'right'], default: 'left', text: 'X.' } as const;
    expect(describeArgument(share, { language: 'de', say })).toBe('X. In %. 0.5, wenn es fehlt.');
    expect(describeArgument(side, { language: 'fr', say })).toBe('X. Au choix : left, right. left si omis.');
    expect(describeArgument(side)).toBe('X. One of left, right. left if left out.');
  });
});
