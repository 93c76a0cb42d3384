import { LitElement } from 'lit';
import { property } from 'lit/decorators.js';
import { type AppStore, StoreController } from './app-store.ts';
import type { Room } from './rooms.ts';

/** An element that shows something of the store and is drawn anew when the store changes. */
export class StoreElement extends LitElement {
  @property({ attribute: false }) store!: AppStore;
  private follows = false;

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.follows) return;
    this.follows = true;
    new StoreController(this, this.store);
  }
}

/** A part of a room, which rests while another room is open. */
export abstract class RoomElement extends StoreElement {
  protected abstract readonly room: Room;

  protected override shouldUpdate(): boolean {
    return this.store.room === this.room;
  }
}
