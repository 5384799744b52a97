import type { ButtonHTMLAttributes } from 'react';
import { Link, type LinkProps } from 'react-router';
import styles from './button.module.css';
import { classes } from '../base/classes';

/** main: the one action of a page; plain: a choice beside it; quiet: reads as a word in the line. */
export type ButtonLook = 'main' | 'plain' | 'quiet';

interface Looks {
  readonly look?: ButtonLook;
  readonly isSmall?: boolean;
}

type ButtonProps = Looks & Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'className'>;

/** A button. It submits nothing unless its type says so. */
export function Button({ look = 'plain', isSmall = false, type = 'button', ...rest }: ButtonProps) {
  return <button type={type} data-look={look} className={buttonClass(look, isSmall)} {...rest} />;
}

/** A link that looks like a button, for an action that opens a page. */
export function ButtonLink({
  look = 'plain',
  isSmall = false,
  ...rest
}: Looks & Omit<LinkProps, 'className'>) {
  return <Link data-look={look} className={buttonClass(look, isSmall)} {...rest} />;
}

function buttonClass(look: ButtonLook, isSmall: boolean): string {
  return classes(styles['button'], styles[look], isSmall && styles['small']);
}
