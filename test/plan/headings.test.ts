import fc from 'fast-check';
import { fieldsOf, TABLES, type TableName } from '../../src/plan/fields';
import { matchHeadings, type CellValue } from '../../src/plan/headings';

/** Headings as they stand in lists of the trade: common practice, no source. */
const SAYINGS: Readonly<Record<string, readonly string[]>> = {
  'channels.channel': [
    'Channel',
    'Ch.',
    'Chan No.',
    'Channel #',
    'Meas. channel',
    'Kanal',
    'Kanal-Nr.',
    'Voie',
    'Canal',
    'Canale',
  ],
  'channels.group': ['Structure part', 'Component', 'Sub-assembly', 'Baugruppe', 'Ensemble', 'Conjunto', 'Gruppo'],
  'channels.point': [
    'Point',
    'Node',
    'Node ID',
    'Grid point',
    'Meas. point',
    'Messpunkt',
    'Knoten Nr.',
    'Nœud',
    'Nodo',
    'Punto di misura',
  ],
  'channels.direction': ['Direction', 'Dir.', 'Axis', 'Messrichtung', 'Richtung', 'Axe', 'Dirección', 'Direzione'],
  'channels.location': [
    'Location',
    'Sensor position',
    'Mounting location',
    'Einbauort',
    'Emplacement',
    'Ubicación',
    'Posizione',
  ],
  'channels.serial': [
    'S/N',
    's / n',
    'Sensor S/N',
    'Ser. no.',
    'Serial No',
    'Serial #',
    'Seriennr.',
    'Serien-Nr.',
    'S.-Nr.',
    'Fabr.-Nr.',
    'N° de série',
    'Nº de série',
    'N.º de serie',
    'Núm. de serie',
    'N. di serie',
    'Matricola',
  ],
  'sensors.serial': [
    'S/N',
    's / n',
    'Sensor S/N',
    'Ser. no.',
    'Serial No',
    'Serial #',
    'Seriennr.',
    'Serien-Nr.',
    'S.-Nr.',
    'Fabr.-Nr.',
    'N° de série',
    'Nº de série',
    'N.º de serie',
    'Núm. de serie',
    'N. di serie',
    'Matricola',
  ],
  'channels.role': ['Role', 'Channel function', 'Funktion', 'Rôle', 'Ruolo'],
  'channels.purpose': ['Purpose', 'Test purpose', 'Versuchszweck', 'Messzweck'],
  'channels.levelLow': [
    'Lowest level [g rms]',
    'a_lo (g rms)',
    'Min. acceleration [mg rms]',
    'a min / g',
    'Smallest expected signal (g)',
    'Kleinster Pegel [g eff]',
    'Niveau min (g eff)',
    'Aceleración mínima [g]',
    'Livello minimo [g]',
  ],
  'channels.levelHigh': [
    'Highest level [g pk]',
    'a_hi (g pk)',
    'amax / g',
    'Peak acceleration [g]',
    'Max. level [m/s²]',
    'Größter Pegel [g Spitze]',
    'Spitzenbeschleunigung in g',
    'Niveau max (g crête)',
    'Aceleración máxima [g pico]',
    'Livello massimo [g]',
  ],
  'channels.bandLow': [
    'Band low [Hz]',
    'fmin / Hz',
    'f_lo [Hz]',
    'Lower frequency (Hz)',
    'Start frequency [Hz]',
    'untere Grenzfrequenz [Hz]',
    'Fréquence min (Hz)',
  ],
  'channels.bandHigh': [
    'Band high [Hz]',
    'fmax / Hz',
    'f hi, kHz',
    'Upper band edge [Hz]',
    'Max frequency in Hz',
    'obere Grenzfrequenz [Hz]',
    'Frecuencia máxima (Hz)',
  ],
  'channels.lineSpacing': [
    'Line spacing [Hz]',
    'Frequency resolution (Hz)',
    'Δf [Hz]',
    'df / Hz',
    'Linienabstand [Hz]',
    'Frequenzauflösung [Hz]',
  ],
  'channels.temperatureLow': [
    'Temperature low [°C]',
    'T min °C',
    'Tmin (degC)',
    'Temp. min [°C]',
    'Min. temperature [°F]',
    'Temperatur min [°C]',
    'Température min (°C)',
  ],
  'channels.temperatureHigh': [
    'Temperature high [°C]',
    'T max °C',
    'Tmax',
    'Temp max (C)',
    'Höchsttemperatur [°C]',
    'Temperatura massima [°C]',
  ],
  'channels.localMass': [
    'Local mass [gram]',
    'Effective mass (g)',
    'm_eff [kg]',
    'Eff. mass [g]',
    'Effektive Masse [g]',
    'Masse locale (g)',
    'Massa efficace [g]',
  ],
  'channels.sensor': [
    'Sensor type',
    'Sensor',
    'Accelerometer',
    'Transducer type',
    'Sensor model',
    'Aufnehmer',
    'Sensortyp',
    'Capteur',
    'Tipo de sensor',
    'Sensore',
  ],
  'channels.mount': [
    'Mount',
    'Mounting',
    'Mounting method',
    'Attachment',
    'Befestigung',
    'Montageart',
    'Fixation',
    'Montaje',
    'Fissaggio',
  ],
  'channels.cable': ['Cable', 'Cable type', 'Cable ID', 'Kabel', 'Kabeltyp', 'Câble', 'Cavo'],
  'channels.input': ['Input', 'Analyser input', 'DAQ input', 'Front-end', 'Eingang', 'Entrée', 'Entrada', 'Ingresso'],
  'channels.remarks': ['Remarks', 'Comment', 'Notes', 'Bemerkung', 'Anmerkungen', 'Remarques', 'Observaciones'],
  'sensors.sensor': ['Sensor type', 'Type', 'Model', 'Sensortyp', 'Typ', 'Modèle', 'Modelo'],
  'sensors.technology': ['Sensing element', 'Technology', 'Messprinzip', 'Technologie', 'Tecnología'],
  'sensors.sensitivity': [
    'Sensitivity [mV/g]',
    'Sens. (mV/g)',
    'sens_mv_per_g',
    'Sensitivity mV/(m/s²)',
    'Sensitivty [mV/g]',
    'Empfindlichkeit [mV/g]',
    'Sensibilité (mV/g)',
  ],
  'sensors.chargeSensitivity': [
    'Charge sensitivity [pC/g]',
    'Charge sens. (pC/g)',
    'Sensitivity [pC/g]',
    'Ladungsempfindlichkeit [pC/g]',
    'Sensibilità [pC/g]',
  ],
  'sensors.fullScale': [
    'Full scale [g pk]',
    'Measuring range (g)',
    'Range [g]',
    'FS / g',
    'Messbereich [g]',
    'Pleine échelle (g)',
    'Fondo de escala [g]',
  ],
  'sensors.mass': ['Mass [gram]', 'Weight [g]', 'mass_g', 'Mass, g', 'Masse/g', 'Gewicht [g]', 'Poids (g)', 'Peso [g]'],
  'sensors.noiseDensity': [
    'Noise density [µg/√Hz]',
    'Spectral noise (µg/√Hz)',
    'Noise [ug/rtHz]',
    'Rauschdichte [µg/√Hz]',
  ],
  'sensors.resonance': [
    'Resonance [Hz]',
    'Mounted resonance [kHz]',
    'Resonant frequency (kHz)',
    'Resonanzfrequenz [kHz]',
    'Fréquence de résonance (kHz)',
  ],
  'sensors.lowLimit': [
    'Low limit [Hz]',
    'Lower frequency limit [Hz]',
    'Corner frequency (Hz)',
    'untere Grenzfrequenz [Hz]',
  ],
  'sensors.temperatureMax': [
    'Temperature max [°C]',
    'Operating temp. max [°C]',
    'Tmax °C',
    'Einsatztemperatur max [°C]',
  ],
  'sensors.coefficient': [
    'Thermal coefficient [%/K]',
    'Temp. coefficient [%/°C]',
    'TC [%/K]',
    'Temperaturkoeffizient [%/K]',
  ],
  'sensors.quantity': ['In stock', 'Qty', 'Anzahl', 'Bestand', 'Quantité', 'Cantidad'],
  'mounts.mountMass': ['Mount mass [gram]', 'Added mass (g)', 'Zusatzmasse [g]'],
  'mounts.stiffness': ['Stiffness [N/m]', 'Axial stiffness (N/µm)', 'Steifigkeit [N/m]', 'Raideur (N/m)'],
  'mounts.holdingForce': ['Holding force [N]', 'Haltekraft [N]', 'Retention force (N)'],
  'cables.cableCapacitance': ['Capacitance [pF]', 'Cable capacitance (nF)', 'Kabelkapazität [pF]', 'Capacité (pF)'],
  'inputs.range': ['Range [V]', 'Input range (V)', 'Messbereich [V]', 'Calibre (V)'],
  'inputs.sampleRate': ['Sample rate [Hz]', 'Sampling rate [kS/s]', 'fs / kHz', 'Abtastrate [Hz]'],
  'inputs.dynamicRange': ['Dynamic range [dB]', 'Dynamik [dB]'],
  'inputs.couplingPoles': ['AC coupling [Hz]', 'High-pass (Hz)', 'Hochpass [Hz]'],
  'inputs.timeConstant': ['Time constant [s]', 'Zeitkonstante [s]'],
};

const split = (field: string): [TableName, string] => field.split('.') as [TableName, string];
const keyOf = (table: TableName, heading: string): string | undefined =>
  [...matchHeadings(table, [heading]).columns.keys()][0];

describe('a heading of the trade names its field', () => {
  it.each(Object.entries(SAYINGS).flatMap(([field, list]) => list.map((heading) => [field, heading] as const)))(
    '%s is meant by "%s"',
    (field, heading) => {
      const [table, key] = split(field);
      expect(keyOf(table, heading)).toBe(key);
    },
  );

  it.each(TABLES.flatMap((table) => fieldsOf(table).map(({ key, title }) => [table, title, key] as const)))(
    '%s: our own title "%s" names %s',
    (table, title, key) => {
      expect(keyOf(table, title)).toBe(key);
    },
  );
});

describe('a heading that means something else is left alone', () => {
  it.each<[TableName, string]>([
    ['sensors', 'Mass (Hz)'],
    ['channels', 'Sensor mass [g]'],
    ['channels', 'Cable serial number'],
    ['channels', 'Cable length [m]'],
    ['channels', 'Cable (m)'],
    ['channels', 'Date of calibration'],
    ['channels', 'RMS level'],
    ['channels', 'Prepared by'],
    ['channels', 'Displacement [mm pk-pk]'],
    ['sensors', 'Mass [gr]'],
    ['sensors', 'Connector'],
    ['sensors', 'Price [EUR]'],
    ['inputs', 'Noise [dB]'],
  ])('%s: "%s" is taken for no field', (table, heading) => {
    expect(keyOf(table, heading)).toBeUndefined();
  });

  it('asks when two columns say the same', () => {
    const { columns, unsure } = matchHeadings('sensors', ['Type', 'Weight [g]', 'Sensor weight [g]']);
    expect(columns.has('mass')).toBe(false);
    expect(unsure.get('mass')?.map(({ column }) => column)).toEqual([1, 2]);
  });
  it('prefers our own title to a synonym beside it', () => {
    const { columns } = matchHeadings('channels', ['Test run', 'Structure part', 'Channel']);
    expect(columns.get('group')?.column).toBe(1);
  });
});

describe('units and statistics in headings', () => {
  const unitOf = (table: TableName, heading: string, key: string) => matchHeadings(table, [heading]).columns.get(key);
  it('reads g as gram over a mass and as standard gravity over a level', () => {
    expect(unitOf('sensors', 'Mass [g]', 'mass')?.unit).toBe('gram');
    expect(unitOf('sensors', 'Full scale [g]', 'fullScale')?.unit).toBe('g');
  });
  it('hands over a unit that is not ours as it is written', () => {
    expect(unitOf('sensors', 'Resonance [kHz]', 'resonance')).toMatchObject({ unit: undefined, unitText: 'kHz' });
    expect(unitOf('channels', 'T min [°F]', 'temperatureLow')).toMatchObject({ unit: undefined, unitText: '°F' });
  });
  it('tells the statistic that the heading names', () => {
    expect(unitOf('channels', 'Highest level [g pk]', 'levelHigh')?.statistic).toBe('peak');
    expect(unitOf('channels', 'Lowest level (grms)', 'levelLow')?.statistic).toBe('rms');
  });
  it('trusts a peak heading more than an r.m.s. one for the highest level', () => {
    const { columns } = matchHeadings('channels', ['Highest level [g rms]', 'Highest level [g pk]']);
    expect(columns.get('levelHigh')?.column).toBe(1);
  });
  it('is less sure of the highest level when the heading says r.m.s.', () => {
    const confidence = (heading: string) => unitOf('channels', heading, 'levelHigh')?.confidence ?? 0;
    expect(confidence('Highest level [g rms]')).toBeLessThan(confidence('Highest level [g pk]'));
  });
});

describe('the cells below a heading', () => {
  const match = (table: TableName, heading: string, cells: readonly CellValue[]) => [
    ...matchHeadings(table, [heading], { columns: [cells] }).columns.keys(),
  ];
  it('contradict a mass that is thousands of gram', () => {
    expect(match('sensors', 'Mass', [200, 80_000, 31_000, 45_000, 12_000, 38_000])).toEqual([]);
    expect(match('sensors', 'Mass', [4.8, 0.8, 0.2, 9])).toEqual(['mass']);
  });
  it('contradict when their own units are of another quantity', () => {
    expect(match('channels', 'Local mass', ['20 Hz', '30 Hz', '50 Hz'])).toEqual([]);
    expect(match('channels', 'Local mass', ['20 g', '0.3 kg', '50 gram'])).toEqual(['localMass']);
  });
  it('make a range of one column when they are ranges', () => {
    expect(match('channels', 'Temperature range', ['15..135 °C', '-5..25 °C'])).toEqual(['temperatureLow']);
    expect(match('channels', 'Temperature range', [20, 30])).toEqual([]);
  });
});

it('a ratio or a level is no serial number', () => {
  for (const heading of ['S/N [dB]', 'S/N (dB)', 'SNR', 'Signal/noise'])
    for (const table of ['channels', 'sensors'] as const)
      expect([heading, ...matchHeadings(table, [heading]).columns.keys()]).toEqual([heading]);
});

describe('the mapping as a whole', () => {
  const list = ['No.', 'Node', 'Dir', 'Location', 'a_lo (g rms)', 'a_hi (g pk)', 'fmin / Hz', 'fmax / Hz', 'T min °C'];
  const headings = [...list, 'T max °C', 'Eff. mass [g]', 'Accelerometer', 'Mounting', 'Cable', 'DAQ input', 'Serial'];
  const named = (order: readonly string[]) =>
    Object.fromEntries([...matchHeadings('channels', order).columns].map(([key, { column }]) => [key, order[column]]));
  it('does not depend on the order of the columns', () => {
    const expected = named(headings);
    expect(Object.keys(expected)).toHaveLength(16);
    fc.assert(
      fc.property(fc.shuffledSubarray(headings, { minLength: headings.length }), (order) => {
        expect(named(order)).toEqual(expected);
      }),
      { numRuns: 30 },
    );
  });
  it('gives a column to one field at most and never throws, whatever stands in the cells', () => {
    const cell = fc.oneof(fc.string(), fc.double(), fc.boolean(), fc.constant(null), fc.constant({ error: '#N/A' }));
    const words = fc.constantFrom(...headings, '[', '(g', '__', 'mV/(', '±', '🙂 [g]', '='.repeat(400), '__proto__');
    fc.assert(
      fc.property(
        fc.constantFrom(...TABLES),
        fc.array(fc.tuple(fc.oneof(words, fc.string({ unit: 'binary' })), fc.array(cell, { maxLength: 5 })), {
          maxLength: 8,
        }),
        (table, sheet) => {
          const { columns, unused } = matchHeadings(
            table,
            sheet.map(([heading]) => heading),
            { columns: sheet.map(([, cells]) => cells) },
          );
          const taken = [...columns.values()].map(({ column }) => column);
          expect(new Set([...taken, ...unused]).size).toBe(sheet.length);
          expect(taken.length + unused.length).toBe(sheet.length);
        },
      ),
      { numRuns: 150 },
    );
  });
});
