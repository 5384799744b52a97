import { readFile } from 'node:fs/promises';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** What is drawn on one page of a PDF: the page and every path's bounding box, in inches. */
export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly boxes: readonly { readonly width: number; readonly height: number }[];
}

type Matrix = readonly [number, number, number, number, number, number];

const POINTS_PER_INCH = 72;

/** Reads the sizes of all paths of a PDF through the page's own transformations, as a printer would draw them. */
export async function readPdf(file: string): Promise<readonly PdfPage[]> {
  const loading = getDocument({ data: new Uint8Array(await readFile(file)), verbosity: 0 });
  const document = await loading.promise;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const { fnArray, argsArray } = await page.getOperatorList();
    pages.push({
      width: (right - left) / POINTS_PER_INCH,
      height: (top - bottom) / POINTS_PER_INCH,
      boxes: pathBoxes(fnArray, argsArray as readonly unknown[]),
    });
  }
  await loading.destroy();
  return pages;
}

function pathBoxes(operators: readonly number[], operands: readonly unknown[]): PdfPage['boxes'] {
  let current: Matrix = [1, 0, 0, 1, 0, 0];
  const saved: Matrix[] = [];
  const boxes: { width: number; height: number }[] = [];
  for (const [index, operator] of operators.entries()) {
    if (operator === OPS.save) saved.push(current);
    else if (operator === OPS.restore) current = saved.pop() ?? current;
    else if (operator === OPS.transform) current = after(current, operands[index] as Matrix);
    else if (operator === OPS.constructPath) {
      const box = (operands[index] as readonly unknown[])[2] as ArrayLike<number> | null;
      if (box !== null) boxes.push(sizeOf(box, current));
    }
  }
  return boxes;
}

function after([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

function sizeOf(box: ArrayLike<number>, [a, b, c, d]: Matrix) {
  const [x, y] = [(box[2] ?? 0) - (box[0] ?? 0), (box[3] ?? 0) - (box[1] ?? 0)];
  return {
    width: (Math.abs(a * x) + Math.abs(c * y)) / POINTS_PER_INCH,
    height: (Math.abs(b * x) + Math.abs(d * y)) / POINTS_PER_INCH,
  };
}
