import { useNavigate } from 'react-router';
import { useWrite } from '#renderer/bridge/query';
import { useOpening } from '#renderer/bridge/workshop';
import { Button } from '#renderer/ui/page/button';
import styles from './frame.module.css';

/** In the demo workshop, says so on every page and shows the way back. */
export function DemoBand() {
  const opening = useOpening();
  const leaving = useWrite('shell:leave-demo');
  const navigate = useNavigate();
  if (opening?.isDemo !== true) return null;
  const leave = () => {
    void leaving.write({}).then((answer) => {
      if (answer.ok) void navigate('/');
    });
  };
  return (
    <aside className={styles['demo']} aria-label="Demo workshop">
      <span>
        This is the demo workshop. Everything in it is invented, and your own notebook is untouched.
      </span>
      <Button look="quiet" isSmall onClick={leave} disabled={leaving.isWriting}>
        Back to my notebook
      </Button>
    </aside>
  );
}
