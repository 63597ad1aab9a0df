import { run } from './run';

const evaluate = async (...formulas: string[]) => {
  const { out } = await run(['eval', '--json', ...formulas]);
  return out
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as { value?: unknown; spill?: unknown[][]; error?: string; message?: string });
};

describe('eval', () => {
  it('works out formulas with our functions, one result for each', async () => {
    const found = await evaluate(
      'CHAN.MASS.RATIO(4, 0.5, 0.5, 100)',
      '=CHAN.CONVERT(1,"g","m/s²")',
      '=1+2*3',
      '=IF(CHAN.VERDICT.ATLEAST(25,20,10)="PASS","holds","does not")',
      '=CHAN.READ("15 kHz","Hz")',
      '="a""b"&1',
      'A1=""',
    );
    // The ratio is (4 + 0.5 + 0.5)/100; standard gravity is 9.80665 m/s² (ISO 80000-3).
    expect(found).toEqual(
      [0.05, 9.80665, 7, 'holds', 15000, 'a"b1', true].map((value) => ({
        value: typeof value === 'number' ? expect.closeTo(value, 12) : value,
      })),
    );
  }, 60_000);

  it('shows a block where a formula fills several cells', async () => {
    const [band, block] = await evaluate('CHAN.THERMAL.BAND("-54:-11; 23:0; 121:11",-54,121)', '{1,2;3,"x"}');
    expect(band!.spill).toEqual([[expect.closeTo(-11, 9), expect.closeTo(11, 9)]]);
    expect(block!.spill).toEqual([
      [1, 2],
      [3, 'x'],
    ]);
  }, 60_000);

  it('says why there is no value', async () => {
    const found = await evaluate(
      'CHAN.MASS.SHIFT(-1)',
      'CHAN.MASS.RATIO(1,2,"3 m",4)',
      'CHAN.MASS.RATIO(1,2,3)',
      'CHAN.MASS.SHIFT(1+"x")',
      'CHAN.NOTHING(1)',
      '1/0',
      'SUM(CHAN.MASS.SHIFT(-1),1)',
    );
    expect(found).toEqual([
      { error: '#VALUE!', message: expect.stringMatching(/^ratio must be ≥ 0; got -1\.$/) },
      { error: '#VALUE!', message: expect.stringMatching(/^cableMass: read “3 m”.*gram/) },
      { error: '#N/A', message: expect.stringContaining('localMass') },
      { error: '#N/A', message: expect.stringContaining('#VALUE!') },
      { error: '#NAME?', message: expect.any(String) },
      { error: '#DIV/0!', message: expect.any(String) },
      { error: '#VALUE!' },
    ]);
  }, 60_000);

  it('ends with 65 when a text is no formula, whatever the others are', async () => {
    for (const broken of ['1+', 'SUM(1,2', '="abc', ')', '=']) {
      const { status, out } = await run(['eval', '1+1', broken]);
      expect([broken, status]).toEqual([broken, 65]);
      expect(out).toMatch(/^2\n#VALUE! {2}This is not a formula/);
    }
    expect((await run(['eval', '1+1', '1/0'])).status).toBe(0);
  }, 60_000);

  it('reads one formula a line from the input when none is given, and asks for one when there is none', async () => {
    expect((await run(['eval'], { typed: '1+1\n\n"b"&"c"\r\n' })).out).toBe('2\nbc\n');
    expect((await run(['eval'], { typed: '\n' })).status).toBe(64);
  }, 60_000);
});
