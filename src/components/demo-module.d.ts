/** Made from shapes/ when the app is built. */
declare module 'virtual:demo-project' {
  type Project = import('../engine/project/types.ts').Project;
  type Shape = Project['drawer']['shapes'][number];
  /** A project whose shapes have their rings as `packRing` packs them. */
  const project: Omit<Project, 'drawer'> & {
    drawer: Omit<Project['drawer'], 'shapes'> & { shapes: (Omit<Shape, 'rings'> & { rings: string[] })[] };
  };
  export default project;
}
