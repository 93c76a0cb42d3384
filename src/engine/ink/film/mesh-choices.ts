import type { Screen } from '../../shapes/types.ts';
import { MESH_TABLE } from './mesh-table.ts';
import { sameMesh, type Mesh } from './mesh.ts';

/** A mesh to choose from. */
export interface MeshChoice {
  label: string;
  mesh: Mesh;
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
