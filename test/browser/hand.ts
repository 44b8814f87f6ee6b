import { expect, type Locator, type Page } from '@playwright/test';
import { cornersOf, stripInView } from '../../src/app/phone/photo/marks';
import type { Strip } from '../../src/signal/ridge-types';
import { handleSpot } from '../../src/ui/handle-place';
import { scaleOf, toScreen, wholeView, type Size, type Spot, type View } from '../../src/ui/view-transform';

export const stageOf = (page: Page): Locator => page.locator('.picture-stage');
/** What fingers and arrows move from now on. */
export const move = (page: Page, what: string) => page.getByText(what, { exact: true }).click();

/** A hand on the picture's stage, and an eye: how the picture lies is read from the strip drawn over it. */
export class Hand {
  private strip: Strip;

  private constructor(
    private readonly page: Page,
    private readonly picture: Size,
    private readonly stage: Size,
  ) {
    this.strip = stripInView(wholeView(picture, stage), stage, picture);
  }

  /** To be called while the strip still lies where it was laid at first. */
  static async on(page: Page, picture: Size): Promise<Hand> {
    const stage = await stageOf(page).evaluate(({ clientWidth: width, clientHeight: height }) => ({ width, height }));
    return new Hand(page, picture, stage);
  }

  private async view(): Promise<View> {
    const path = await this.page.locator('.picture-over > .picture-line').first().getAttribute('d');
    const drawn = [...(path ?? '').matchAll(/-?[\d.]+/g)].map(Number);
    const [a, , b] = cornersOf(this.strip);
    const [p, q] = [b!.x - a!.x, b!.y - a!.y];
    const [r, t] = [drawn[4]! - drawn[0]!, drawn[5]! - drawn[1]!];
    const re = (r * p + t * q) / (p * p + q * q);
    const im = (t * p - r * q) / (p * p + q * q);
    return { re, im, x: drawn[0]! - re * a!.x + im * a!.y, y: drawn[1]! - im * a!.x - re * a!.y };
  }

  private async corner(): Promise<Spot> {
    await stageOf(this.page).scrollIntoViewIfNeeded();
    return stageOf(this.page).evaluate((element) => {
      const { left, top } = element.getBoundingClientRect();
      return { x: left + element.clientLeft, y: top + element.clientTop };
    });
  }

  /** Back to the whole, then zoomed with the wheel about a place in the picture. */
  async zoomTo(place: Spot, factor: number): Promise<void> {
    await this.page.getByRole('button', { name: 'Whole' }).click();
    if (factor === 1) return;
    const at = toScreen(wholeView(this.picture, this.stage), place);
    const corner = await this.corner();
    await this.page.mouse.move(corner.x + at.x, corner.y + at.y);
    await this.page.mouse.wheel(0, -Math.round(Math.log(factor) / 0.0015));
    const wanted = scaleOf(wholeView(this.picture, this.stage)) * factor;
    await expect(async () => expect(scaleOf(await this.view()) / wanted).toBeCloseTo(1, 2)).toPass();
  }

  /** Where the point of a handle stands on the stage now, as the eye sees it. */
  private async seen(sign: string): Promise<Spot> {
    const line = this.page.locator('.picture-handle', { hasText: sign }).locator('.picture-line');
    const [x, y] = [...((await line.getAttribute('d')) ?? '').matchAll(/-?[\d.]+/g)].slice(-2).map(Number);
    return { x: x!, y: y! };
  }

  /** Drags the handle with this sign, seen from `from`, until its point is at `to`: both in picture pixels. */
  async drag(sign: string, from: Spot, to: Spot): Promise<void> {
    const corner = await this.corner();
    const view = await this.view();
    const point = await this.seen(sign);
    const handle = handleSpot(point, toScreen(view, from), this.stage)!;
    const goal = toScreen(view, to);
    const [x, y] = [corner.x + handle.x, corner.y + handle.y];
    await this.page.mouse.move(x, y);
    await this.page.mouse.down();
    await this.page.mouse.move(x + (goal.x - point.x) / 2, y + (goal.y - point.y) / 2);
    await this.page.mouse.move(x + goal.x - point.x, y + goal.y - point.y);
    await this.page.mouse.up();
    // A mouse's own coordinates may be whole pixels.
    const reached = await this.seen(sign);
    expect(Math.hypot(reached.x - goal.x, reached.y - goal.y)).toBeLessThan(1.5);
  }

  /** Where something lies that was laid at shares of the stage on the whole picture. */
  laid(x: number, y: number): Spot {
    const whole = wholeView(this.picture, this.stage);
    const clamp = (value: number, most: number) => Math.min(Math.max(value, 0), most);
    return {
      x: clamp((x * this.stage.width - whole.x) / whole.re, this.picture.width),
      y: clamp((y * this.stage.height - whole.y) / whole.re, this.picture.height),
    };
  }

  /** Sets both scale marks: roughly first, then each again from close by. */
  async setMarks(a: Spot, b: Spot): Promise<void> {
    await move(this.page, 'the scale');
    await this.zoomTo(a, 1);
    const roughA = { x: a.x, y: a.y + 20 };
    const roughB = { x: b.x, y: b.y - 20 };
    await this.drag('A', this.laid(0.22, 0.68), roughA);
    await this.drag('B', roughA, roughB);
    await this.zoomTo(a, 10);
    await this.drag('A', roughB, a);
    await this.zoomTo(b, 10);
    await this.drag('B', a, b);
    await this.zoomTo(b, 1);
  }

  /** Lays the strip from one place to another, as wide as it was; after the marks, which are set more closely. */
  async setStrip(from: Spot, to: Spot): Promise<void> {
    await move(this.page, 'the strip');
    await this.zoomTo(from, 1);
    await this.drag('1', this.strip.to, from);
    this.strip = { ...this.strip, from };
    await this.drag('2', from, to);
    this.strip = { ...this.strip, to };
  }
}
