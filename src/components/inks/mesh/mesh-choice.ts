import { MESH_TABLE } from '../../../engine/ink/film/mesh-table.ts';
import type { Mesh } from '../../../engine/ink/film/mesh.ts';
import type { Screen } from '../../../engine/shapes/types.ts';

/** A mesh to choose from. */
export interface MeshChoice {
  label: string;
  mesh: Mesh;
}

/** Same mesh, whatever the order in which its figures were written. */
export function sameMesh(a: Mesh, b: Mesh): boolean {
  return (
    a.threadsPerCm === b.threadsPerCm &&
    a.threadUm === b.threadUm &&
    a.fabricUm === b.fabricUm &&
    a.statedOpenArea === b.statedOpenArea &&
    a.statedVolumeCm3PerM2 === b.statedVolumeCm3PerM2
  );
}

/** '90-48', or the label of the table's row that the mesh is. */
export function meshName(mesh: Mesh): string {
  const row = MESH_TABLE.find((each) => sameMesh(each.mesh, mesh));
  return row?.label ?? `${Math.round(mesh.threadsPerCm * 10) / 10}-${mesh.threadUm}`;
}

/** Meshes of the screens first, then the table's, none twice; `own` too when it is neither. */
export function meshChoices(screens: readonly Pick<Screen, 'mesh'>[], own?: Mesh): { screens: MeshChoice[]; table: MeshChoice[] } {
  const onScreens: MeshChoice[] = [];
  const add = (mesh: Mesh): void => {
    if (!onScreens.some((each) => sameMesh(each.mesh, mesh))) onScreens.push({ label: meshName(mesh), mesh });
  };
  for (const { mesh } of screens) add(mesh);
  if (own !== undefined && !MESH_TABLE.some((row) => sameMesh(row.mesh, own))) add(own);
  const table = MESH_TABLE.filter((row) => !onScreens.some((each) => sameMesh(each.mesh, row.mesh))).map(({ label, mesh }) => ({
    label,
    mesh,
  }));
  return { screens: onScreens, table };
}
