import './ui/paper.css';
import './ui/theme.css';
import './app-root.ts';
import { boot } from './boot.ts';

const { store, saver } = await boot();
const root = document.createElement('app-root');
root.store = store;
root.saver = saver;
document.body.append(root);
