import { run } from './run';

interface Listed {
  readonly name: string;
  readonly summary: string;
  readonly signature: string;
  readonly args: readonly { readonly name: string; readonly hint: string }[];
  readonly result: { readonly text?: string };
}
const listed = async (...language: string[]): Promise<Listed[]> =>
  JSON.parse((await run(['functions', '--json', ...language])).out) as Listed[];

describe('channelwright functions --language', () => {
  it('describes in the language, and leaves names and arguments as they are', async () => {
    const [english, german] = [await listed(), await listed('--language', 'de')];
    const fixed = ({ name, signature, args }: Listed) => [name, signature, args.map((arg) => arg.name)];
    expect(german.map(fixed)).toEqual(english.map(fixed));
    expect(german.find(({ name }) => name === 'CHAN.MASS.RATIO')).toMatchObject({
      summary: 'Massenverhältnis: alles am Punkt Hinzugefügte durch die örtliche wirksame Masse dort.',
      args: expect.arrayContaining([
        expect.objectContaining({ name: 'sensorMass', hint: expect.stringMatching(/^Masse des Aufnehmers\. \(gram/) }),
      ]),
      result: { text: 'Hinzugefügte Masse durch örtliche Masse.' },
    });
  });

  it('lists by family in French when asked for a region of it', async () => {
    const { out, status } = await run(['functions', '--language', 'fr-CA']);
    expect(status).toBe(0);
    expect(out).toContain('Charge massique\n');
    expect(out).toContain('CHAN.MASS.RATIO(sensorMass, mountMass, cableMass, localMass)');
    expect(out).toContain('Donne rapport.');
  });

  it('refuses a language that it does not speak instead of answering in English', async () => {
    expect(await run(['functions', '--language', 'it'])).toMatchObject({
      status: 64,
      error: expect.stringContaining('language "it" is not spoken; expected en, de, fr'),
    });
  });
});
