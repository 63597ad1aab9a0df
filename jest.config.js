const bundled = require('./test/bundled');

/** @type {import('jest').Config} */
module.exports = {
  testEnvironment: 'node',
  roots: ['<rootDir>/test'],
  testMatch: ['**/*.test.ts'],
  transform: { '^.+\\.ts$': '<rootDir>/test/typescript-transform.js' },
  moduleNameMapper: bundled(['hucre', 'lodash-es', 'nanoid', 'rbush', 'kdbush', 'cjk-regex', 'franc-min', 'd3-scale']),
};
