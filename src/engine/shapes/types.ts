import type { FillRule } from '../geometry/types.ts';

/** A shape in the drawer: plain numbers, so that it can be saved as JSON. */
export interface Shape {
  id: string;
  name: string;
  /** Closed outlines, flat [x0, y0, …], mm, y down, in the coordinates of the file they came from. */
  rings: number[][];
  fillRule: FillRule;
  /** Extent of the filled outlines, mm. */
  widthMm: number;
  heightMm: number;
}

/** A shape on a screen: its box's centre at (xMm, yMm) on the sheet, turned about that centre. */
export interface PlacedShape {
  shape: string;
  /** From the sheet's left edge, mm. */
  xMm: number;
  /** From the sheet's top edge, mm. */
  yMm: number;
  /** Clockwise, degrees. */
  turnDeg: number;
  /** 1 prints the shape at the size of its file. */
  scale: number;
  /** Mirrored left to right before it is turned: its film lies the other way up. */
  mirrored?: true | undefined;
}

/** A mesh. A data sheet's own figures, when known, go before the formulas: measured meshes run lower. */
export interface Mesh {
  /** Threads per cm; a mesh sold per inch has n / 2.54. Labels are rounded. */
  threadsPerCm: number;
  /** Thread diameter, µm. */
  threadUm: number;
  /** Fabric thickness, µm; absent = 1.55 thread diameters. */
  fabricUm?: number | undefined;
  /** Open area as the maker states it, share 0–1. */
  statedOpenArea?: number | undefined;
  /** Theoretical ink volume as the maker states it, cm³/m². */
  statedVolumeCm3PerM2?: number | undefined;
}

/** A stencil: one or more placed shapes on a mesh. */
export interface Screen {
  id: string;
  /** The number on the frame; unique in a drawer. */
  number: number;
  name: string;
  placed: PlacedShape[];
  mesh: Mesh;
}
