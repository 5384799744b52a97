/** Whether an element is one that text is typed into. */
export function isTextField(element: Element | null): boolean {
  if (element instanceof HTMLTextAreaElement) return true;
  return (
    element instanceof HTMLInputElement && !['checkbox', 'radio', 'button', 'submit'].includes(element.type)
  );
}
