/** Made from shapes/ when the app is built. */
declare module 'virtual:demo-project' {
  const project: import('../engine/project/types.ts').Project;
  export default project;
}
