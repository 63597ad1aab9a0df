const SWEEPS = 60;

/** Eigenvalues of a real symmetric matrix by cyclic Jacobi rotations, in no order. Meant for tens of rows. */
export const symmetricEigenvalues = (matrix: readonly (readonly number[])[]): number[] => {
  const a = matrix.map((row) => [...row]);
  const size = a.length;
  const scale = Math.max(...a.flat().map(Math.abs), 0);
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    let rest = 0;
    for (let p = 0; p < size; p++) {
      for (let q = p + 1; q < size; q++) {
        rest = Math.max(rest, Math.abs(a[p]![q]!));
        rotate(a, p, q);
      }
    }
    if (rest <= Number.EPSILON * scale) break;
  }
  return a.map((row, i) => row[i]!);
};

/** Turns rows and columns p and q so that their common element vanishes. */
const rotate = (a: number[][], p: number, q: number): void => {
  const rowP = a[p]!;
  const rowQ = a[q]!;
  if (rowP[q] === 0) return;
  const ratio = (rowQ[q]! - rowP[p]!) / (2 * rowP[q]!);
  const tangent = (ratio < 0 ? -1 : 1) / (Math.abs(ratio) + Math.hypot(ratio, 1));
  const cosine = 1 / Math.hypot(tangent, 1);
  const sine = tangent * cosine;
  for (const row of a) {
    const [atP, atQ] = [row[p]!, row[q]!];
    row[p] = cosine * atP - sine * atQ;
    row[q] = sine * atP + cosine * atQ;
  }
  for (let k = 0; k < a.length; k++) {
    const [atP, atQ] = [rowP[k]!, rowQ[k]!];
    rowP[k] = cosine * atP - sine * atQ;
    rowQ[k] = sine * atP + cosine * atQ;
  }
};
