import { html } from 'lit';
import { piecesAgain, placesAgain } from '../../../engine/shapes/draw/places-again.ts';
import type { Traced } from '../../../engine/shapes/trace/trace.ts';
import type { Shape } from '../../../engine/shapes/types.ts';
import type { AppStore } from '../../app-store.ts';
import { say } from '../../words/en/drawer/draw.ts';
import '../trace/trace-dialog.ts';
import type { FilesRead } from '../read-files.ts';
import './blade-dialog.ts';
import './cut-dialog.ts';
import './draw-dialog.ts';
import { tracedFiles } from '../trace/traced-files.ts';
import { drawnFiles, type MadeShape, pieceFiles, type ShapePieces } from './drawn-files.ts';

/** The button that opens an empty drawing board. */
export function drawButton(store: AppStore) {
  const open = (event: Event): void => {
    const { paper, shapes } = store.project.drawer;
    dialogBeside(event, 'drawer-draw')?.open({ paper, name: say.drawnShapeShapes(shapes.length + 1) });
  };
  return html`<button class="quiet" @click=${open}>${say.drawShape2}</button>`;
}

/** The button that cuts and joins a shape. */
export function cutButton(shape: Shape, shapes: readonly Shape[], on: readonly number[]) {
  return html`<button @click=${(event: Event) => dialogBeside(event, 'drawer-cut')?.open({ shape, shapes, on })}>${say.cutAndJoin2}</button>`;
}

/** The button that cuts a shape to pieces along a line. */
export function bladeButton(shape: Shape, on: readonly number[]) {
  return html`<button @click=${(event: Event) => void dialogBeside(event, 'drawer-blade')?.open({ shape, on })}>${say.cutAlongLine2}</button>`;
}

/** The dialogs that make shapes. @param put takes what came of one into the drawer */
export function shapeDialogs(store: AppStore, put: (read: FilesRead) => void) {
  const replace = (shape: Shape): void => {
    const { shapes, screens } = store.project.drawer;
    const before = shapes.find(({ id }) => id === shape.id);
    if (before !== undefined) store.dispatch({ kind: 'replace-shape', shape, places: placesAgain(before, shape, screens) });
  };
  const toPieces = ({ shape, pieces }: ShapePieces): void => {
    store.dispatch({ kind: 'cut-to-pieces', shape: shape.id, pieces, places: piecesAgain(shape, pieces, store.project.drawer.screens) });
  };
  return html`<drawer-trace @traced=${(event: CustomEvent<Traced>) => put(tracedFiles(event.detail))}></drawer-trace>
    <drawer-draw @made=${(event: CustomEvent<MadeShape>) => put(drawnFiles(event.detail))}></drawer-draw>
    <drawer-cut
      @made=${(event: CustomEvent<MadeShape>) => put(drawnFiles(event.detail))}
      @replaced=${(event: CustomEvent<Shape>) => replace(event.detail)}
    ></drawer-cut>
    <drawer-blade
      @pieces=${(event: CustomEvent<ShapePieces>) => put(pieceFiles(event.detail))}
      @cut-to-pieces=${(event: CustomEvent<ShapePieces>) => toPieces(event.detail)}
    ></drawer-blade>`;
}

function dialogBeside<Name extends 'drawer-draw' | 'drawer-cut' | 'drawer-blade'>(
  event: Event,
  name: Name,
): HTMLElementTagNameMap[Name] | null {
  return ((event.currentTarget as Element).getRootNode() as ShadowRoot).querySelector(name);
}
