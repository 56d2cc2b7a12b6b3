import type { ButtonHTMLAttributes, ReactNode } from 'react';
import { classNames } from '../frame/class-names';
import './button.css';

type Tone = 'act' | 'plain' | 'quiet';

interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  /** `act` for the one thing the page is for, `plain` beside it, `quiet` inside a line of other things. */
  readonly tone?: Tone;
  readonly icon?: ReactNode;
}

/** A button at least 44 px each way. */
export function Button({ tone = 'plain', icon, className, children, ...rest }: ButtonProps) {
  return (
    <button type="button" className={classNames('button', `button-${tone}`, className)} {...rest}>
      {icon}
      {children}
    </button>
  );
}

interface IconButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  /** Said aloud, and shown as a hint. */
  readonly label: string;
  readonly icon: ReactNode;
}

/** A square button that shows only a picture; its name is always there for ears and as a hint. */
export function IconButton({ label, icon, className, ...rest }: IconButtonProps) {
  return (
    <button
      type="button"
      aria-label={label}
      title={label}
      className={classNames('button button-icon', className)}
      {...rest}
    >
      {icon}
    </button>
  );
}
