// Which python3 has the modules a test needs: the one on the path may be another than Debian's.
const { spawnSync } = require('node:child_process');

const CANDIDATES = [process.env.PYTHON, 'python3', '/usr/bin/python3'].filter(Boolean);

const pythonWith = (...modules) =>
  CANDIDATES.find(
    (command) => spawnSync(command, ['-c', `import ${modules.join(', ')}`], { stdio: 'ignore' }).status === 0,
  );

module.exports = { pythonWith };
