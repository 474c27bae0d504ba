/**
 * A text field takes back its own letters, and Ctrl+Z is left to it while it holds something that was typed since it got
 * the focus or since Enter. Otherwise the same keys take back the last change of the workbook.
 */
export function watchOwnUndo(page: Document): { readonly holdsTyping: () => boolean; readonly stop: () => void } {
  let field: TextInput | null = null;
  let begun = '';
  const begin = (target: EventTarget | null) => {
    field = isTextInput(target) ? target : null;
    begun = field?.value ?? '';
  };
  const onFocus = (event: Event) => begin(event.target);
  // Enter saves a line; in a text of several lines it is a letter like any other.
  const onKey = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && isTextInput(event.target) && event.target.tagName === 'INPUT') begin(event.target);
  };
  begin(page.activeElement);
  page.addEventListener('focusin', onFocus);
  page.addEventListener('keydown', onKey);
  return {
    holdsTyping: () => field !== null && field === page.activeElement && field.value !== begun,
    stop: () => {
      page.removeEventListener('focusin', onFocus);
      page.removeEventListener('keydown', onKey);
    },
  };
}

type TextInput = HTMLInputElement | HTMLTextAreaElement;

const NO_TEXT = /^(checkbox|radio|button|submit|reset|file|range|color|image|hidden)$/;

function isTextInput(target: EventTarget | null): target is TextInput {
  if (target === null || !('tagName' in target)) return false;
  return (
    target.tagName === 'TEXTAREA' ||
    (target.tagName === 'INPUT' && 'type' in target && !NO_TEXT.test(String(target.type)))
  );
}
