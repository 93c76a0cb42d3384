import { html, nothing } from 'lit';
import { say } from '../../words/en/ui/print.ts';
import '../kit/progress.ts';
import { download } from '../download.ts';
import { workFailure } from '../work-failure.ts';
import type { Work } from '../work.ts';

/** A file that was made, and the name under which it is saved. */
export interface MadeFile {
  file: Blob;
  name: string;
}

/** Saves what was made and shuts the dialog in which it was asked for. */
export function saveAndClose({ file, name }: MadeFile, dialog: HTMLDialogElement): void {
  download(name, file, file.type);
  dialog.close();
}

/** The form of a dialog that makes a file: what is asked, how far it is, why it failed, Cancel and Save. */
export function saveForm(making: Work<MadeFile>, { make, cancel }: { make(): void; cancel(): void }, asked: unknown) {
  const { running, progress } = making;
  const submit = (event: Event): void => {
    event.preventDefault();
    make();
  };
  return html`<form @submit=${submit}>
    ${asked}
    ${running ? html`<ps-progress label=${say.madeSoFar} .value=${progress} @stop=${() => making.stop()}></ps-progress>` : nothing}
    ${workFailure(making)}
    <div class="buttons">
      <button type="button" @click=${cancel}>${say.cancel}</button>
      <button class="main" ?disabled=${running}>${say.save}</button>
    </div>
  </form>`;
}
