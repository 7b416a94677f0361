// The pages that we make, in a browser alone: whether everybody can read and reach what is on them, and whether the
// preview changes without losing its reader's place.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { makeSampleHistory } from '../review/sampleHistory.mjs';
import { bundled } from './bundled.mjs';
import { themes } from './themes.mjs';
import { until } from './workbench.mjs';

const folder = 'sample-procedures/procedures';
const whole = `${folder}/v4-major.procedure.yaml`;
const samples = [
  whole,
  `${folder}/v4-wheel-44.procedure.yaml`,
  `${folder}/h9-rebuild.procedure.yaml`,
  'sample-procedures/faulty/torque-without-a-unit.procedure.yaml',
];

let loaded;
const own = () => {
  loaded ??= bundled('ownPages.ts');
  return loaded;
};
const open = async (path) => (await own()).OpenProcedure.open(path);

async function shown(workbench, view, theme = themes.light) {
  const { previewPage } = await own();
  await workbench.showPreview(previewPage(view), theme);
}

/** The faults of a page, told with what it is. */
async function assertFaultless(workbench, what) {
  assert.deepEqual(await workbench.faults(), [], what);
}

export const scenarios = [
  {
    name: 'a sheet as a file can be read by everybody, light and dark',
    async run({ workbench }) {
      for (const path of samples) {
        const file = (await open(path)).file();
        for (const scheme of path === whole ? ['light', 'dark'] : ['light']) {
          await workbench.showFile(file, { scheme });
          await assertFaultless(workbench, `${path}, ${scheme}`);
        }
      }
    },
  },
  {
    name: 'a walk as a file can be read by everybody',
    async run({ workbench }) {
      await workbench.showFile((await open(whole)).walk('file').html);
      await assertFaultless(workbench, whole);
    },
  },
  {
    name: 'a review as a page can be read by everybody, light and dark',
    async run({ workbench, folder }) {
      const repository = join(folder, '..', 'history');
      makeSampleHistory(repository);
      const page = await (await own()).reviewPage(repository, 'issue-1', 'HEAD');
      for (const scheme of ['light', 'dark']) {
        await workbench.showFile(page, { scheme });
        await assertFaultless(workbench, `a review, ${scheme}`);
      }
    },
  },
  ...Object.entries(themes).map(([name, theme]) => ({
    name: `the preview can be read by everybody in a ${name} theme`,
    async run({ workbench }) {
      const procedure = await open(samples.at(-1));
      const messages = { sheet: procedure.patch(), walk: procedure.walk('preview'), pages: await procedure.pages() };
      for (const [view, message] of Object.entries(messages)) {
        await shown(workbench, view, theme);
        await workbench.send(message);
        await workbench.send({ is: 'caret', offset: procedure.text.length });
        await assertFaultless(workbench, view);
      }
    },
  })),
  {
    name: 'the sheet can be read by whoever sets colours of their own, and asks for no motion',
    async run({ workbench }) {
      await workbench.showFile((await open(whole)).file(), { forcedColors: 'active' });
      await assertFaultless(workbench, 'forced colours');
      const moving = await workbench.page.evaluate(
        () => [...document.querySelectorAll('*')].filter((one) => one.getAnimations().length > 0).length,
      );
      assert.equal(moving, 0);
    },
  },
  {
    name: 'at four times the size nothing runs off the page',
    async run({ workbench }) {
      // A window of 1280 pixels at 400 % shows as much as one of 320.
      const { page } = workbench;
      const before = page.viewportSize();
      await page.setViewportSize({ width: 320, height: 640 });
      await shown(workbench, 'sheet');
      await workbench.send((await open(whole)).patch());
      const [width, room] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
      await page.setViewportSize(before);
      assert.ok(width <= room, `the page is ${width} wide and has ${room}`);
    },
  },
  {
    name: 'the first key reaches a link past the tools, and the headings go down by one',
    async run({ workbench }) {
      const { page } = workbench;
      await shown(workbench, 'sheet');
      await workbench.send((await open(whole)).patch());
      await page.keyboard.press('Tab');
      assert.equal(await page.evaluate(() => document.activeElement.id), 'skip');
      await page.keyboard.press('Enter');
      assert.equal(await page.evaluate(() => document.activeElement.id), 'sheet');
      const levels = await page.evaluate(() =>
        [...document.querySelectorAll('h1, h2, h3, h4')].map((heading) => Number(heading.tagName[1])),
      );
      assert.deepEqual([levels[0], levels.filter((level) => level === 1).length], [1, 1]);
      assert.ok(
        levels.every((level, at) => at === 0 || level <= levels[at - 1] + 1),
        levels.join(' '),
      );
    },
  },
  {
    name: 'the page says that the sheet is up to date once the typing rests',
    async run({ workbench }) {
      const procedure = await open(samples.at(-1));
      await shown(workbench, 'sheet');
      await workbench.send(procedure.patch());
      const said = () => workbench.page.evaluate(() => document.getElementById('announced').textContent);
      assert.equal(await said(), '');
      await until('the words', async () => (await said()) === 'The sheet is up to date. 1 error stands');
    },
  },
  {
    name: 'a key changes the step that is typed in and nothing else: place, focus and selection stay',
    async run({ workbench }) {
      const { page } = workbench;
      const procedure = await open(whole);
      await shown(workbench, 'sheet');
      await workbench.send(procedure.patch());
      const before = await page.evaluate(() => {
        const steps = [...document.querySelectorAll('section.step')];
        const [, , third, , fifth] = steps;
        third.scrollIntoView();
        fifth.focus({ preventScroll: true });
        getSelection().selectAllChildren(third.querySelector('.step-title'));
        globalThis.kept = steps;
        return {
          scroll: scrollY,
          selected: getSelection().toString(),
          title: fifth.querySelector('.step-title').textContent,
        };
      });
      procedure.change(procedure.text.replace(before.title, `${before.title} anew`));
      await workbench.send(procedure.patch());
      const after = await page.evaluate(() => ({
        scroll: scrollY,
        selected: getSelection().toString(),
        focused: document.activeElement === kept[4],
        title: kept[4].querySelector('.step-title').textContent,
        same: [...document.querySelectorAll('section.step')].every((step, at) => step === kept[at]),
      }));
      assert.equal(after.title, `${before.title} anew`);
      assert.deepEqual({ ...after, title: before.title }, { ...before, focused: true, same: true });
    },
  },
  {
    name: 'steps that come, go and change places are what a fresh page shows',
    async run({ workbench }) {
      const { page } = workbench;
      const procedure = await open(whole);
      await shown(workbench, 'sheet');
      await workbench.send(procedure.patch());
      const items = procedure.text.split(/(?=^ {6}- step: )/m);
      const [head, ...steps] = items;
      const [first, second, third, ...others] = steps;
      const texts = [
        [head, second, first, third, ...others],
        [head, first, ...others],
        [head, first, second, third, second, ...others],
        items,
      ];
      for (const text of texts) {
        procedure.change(text.join(''));
        await workbench.send(procedure.patch());
        const difference = await page.evaluate((markup) => {
          const patched = document.getElementById('sheet').cloneNode(true);
          const next = new DOMParser().parseFromString(markup, 'text/html').body;
          for (const one of patched.querySelectorAll('[tabindex], [aria-current]')) {
            if (one.matches('.step')) one.removeAttribute('tabindex');
            one.removeAttribute('aria-current');
          }
          // The page knows where steps stand without their markup.
          for (const one of next.querySelectorAll('.step')) {
            one.removeAttribute('data-source-uri');
            one.removeAttribute('data-source-offset');
          }
          const words = [...patched.children].map((one) => one.outerHTML).join('');
          const wanted = [...next.children].map((one) => one.outerHTML).join('');
          return words === wanted ? '' : `${words.length} characters for ${wanted.length}`;
        }, procedure.preview());
        assert.equal(difference, '');
      }
    },
  },
  {
    name: 'a click on a step, and on its place on a printed page, names its place in the source',
    async run({ workbench }) {
      const { page } = workbench;
      const procedure = await open(whole);
      await shown(workbench, 'sheet');
      await workbench.send(procedure.patch());
      await page.locator('section.step .step-title').nth(3).click();
      const offset = procedure.text.indexOf('step: ', nth(procedure.text, '- step: ', 3));
      const said = () => page.evaluate(() => messages.filter((message) => message.is === 'source').at(-1));
      assert.ok(Math.abs((await said()).offset - offset) <= 2, 'the place of the step');
      await page.locator('#show-pages').click();
      assert.deepEqual(await page.evaluate(() => messages.at(-1)), { is: 'view', view: 'pages' });
      await workbench.send(await procedure.pages());
      await page.locator('.mark').nth(5).click();
      assert.ok(Math.abs((await said()).offset - nth(procedure.text, '- step: ', 5)) <= 2, 'the place on the page');
    },
  },
];

/** Where a word stands for the nth time, counted from 0. */
function nth(text, word, count) {
  let at = text.indexOf(word);
  for (let i = 0; i < count; i++) at = text.indexOf(word, at + 1);
  return at;
}
