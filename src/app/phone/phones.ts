import type { Component } from 'solid-js';
import type { PhoneInstrument } from '../../engine/calculator';
import { part } from '../desk/parts/part';
import type { PanelProps } from './panel';
import say from './words/en';

interface Phone {
  readonly title: string;
  /** The question it answers. */
  readonly question: string;
  /** What a person would say, for the search. */
  readonly sayings: readonly string[];
  /** Words on the key beside a line that it can fill. */
  readonly key: string;
  readonly Panel: Component<PanelProps>;
}

/** The phone's own instruments. Each is loaded when it is first asked for. */
export const phones: Readonly<Record<PhoneInstrument, Phone>> = {
  note: {
    ...say.instruments.note,
    Panel: part(async () => (await import('./listen')).NotePanel, say.instrument),
  },
  clicks: {
    ...say.instruments.clicks,
    Panel: part(async () => (await import('./listen')).ClicksPanel, say.instrument),
  },
  ridges: {
    ...say.instruments.ridges,
    Panel: part(async () => (await import('./ridges/panel')).RidgesPanel, say.instrument),
  },
  ripples: {
    ...say.instruments.ripples,
    Panel: part(async () => (await import('./ripples/panel')).RipplesPanel, say.instrument),
  },
  skew: {
    ...say.instruments.skew,
    Panel: part(async () => (await import('./skew/panel')).SkewPanel, say.instrument),
  },
  slope: {
    ...say.instruments.slope,
    Panel: part(async () => (await import('./level/panel')).SlopePanel, say.instrument),
  },
};
