import type { Page } from '@playwright/test';

/** Everything a page says, shown, folded away or only read aloud: one piece of text a line. */
export const wordsOn = (page: Page): Promise<string> =>
	page.evaluate(() => {
		const spoken = ['aria-label', 'alt', 'title', 'placeholder'];
		const texts: string[] = [document.title];
		const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
		while (walker.nextNode()) {
			const { parentElement, textContent } = walker.currentNode;
			if (!parentElement?.closest('script, style')) texts.push(textContent ?? '');
		}
		for (const element of document.body.querySelectorAll('*'))
			for (const name of spoken) texts.push(element.getAttribute(name) ?? '');
		return texts.join('\n');
	});
