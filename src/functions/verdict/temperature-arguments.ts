/** Temperatures needed, and the operating limits of the parts that they are held against. */
export const TEMPERATURE_ARGUMENTS = {
  temperatureLow: { unit: '°C', text: 'Lowest temperature needed.', forgiving: true, rangeWith: 'temperatureHigh' },
  temperatureHigh: { unit: '°C', text: 'Highest temperature needed.', forgiving: true },
  sensorMin: { unit: '°C', text: 'Lower operating limit of the sensor.', forgiving: true },
  sensorMax: { unit: '°C', text: 'Upper operating limit of the sensor.', forgiving: true },
  mountMin: { unit: '°C', text: 'Lower limit of the mount; blank: not limited.', forgiving: true },
  mountMax: { unit: '°C', text: 'Upper limit of the mount; blank: not limited.', forgiving: true },
  cableMin: { unit: '°C', text: 'Lower limit of the cable; blank: not limited.', forgiving: true },
  cableMax: { unit: '°C', text: 'Upper limit of the cable; blank: not limited.', forgiving: true },
} as const;
