-- Runs judged again: what was asked, how far it is, and both verdicts of each run. Derived; dropped when it is old.
CREATE TABLE cure.judged_again (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  asked jsonb NOT NULL,
  asked_at timestamptz NOT NULL,
  cutoff bigint NOT NULL,
  total integer NOT NULL,
  done integer NOT NULL,
  state text NOT NULL CHECK (state IN ('RUNNING', 'DONE', 'FAILED')),
  problem text
);
CREATE TABLE cure.judged_again_line (
  job bigint NOT NULL REFERENCES cure.judged_again ON DELETE CASCADE,
  entry bigint NOT NULL,
  run bigint NOT NULL REFERENCES cure.run,
  before text NOT NULL,
  before_sentence text NOT NULL,
  after text NOT NULL,
  after_sentence text NOT NULL,
  PRIMARY KEY (job, entry)
);

CREATE TABLE electrical.judged_again (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  asked jsonb NOT NULL,
  asked_at timestamptz NOT NULL,
  cutoff bigint NOT NULL,
  total integer NOT NULL,
  done integer NOT NULL,
  state text NOT NULL CHECK (state IN ('RUNNING', 'DONE', 'FAILED')),
  problem text
);
CREATE TABLE electrical.judged_again_line (
  job bigint NOT NULL REFERENCES electrical.judged_again ON DELETE CASCADE,
  entry bigint NOT NULL,
  run bigint NOT NULL REFERENCES electrical.run,
  before text NOT NULL,
  before_sentence text NOT NULL,
  after text NOT NULL,
  after_sentence text NOT NULL,
  PRIMARY KEY (job, entry)
);
