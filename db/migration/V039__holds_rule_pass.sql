-- Which rules a person may sign to be passed, and what was signed.
CREATE TABLE holds.soft_rules_revision (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  revision text NOT NULL UNIQUE,
  effective_at timestamptz NOT NULL
);
CALL ledger.keep_as_history('holds.soft_rules_revision');

CREATE TABLE holds.soft_rule (
  entry bigint NOT NULL REFERENCES holds.soft_rules_revision,
  rule text NOT NULL,
  PRIMARY KEY (entry, rule)
);
COMMENT ON TABLE holds.soft_rule IS 'the rules that may be passed while this revision is the last in force';
CALL ledger.keep_as_history('holds.soft_rule');

CREATE TABLE holds.rule_pass (
  entry bigint NOT NULL REFERENCES ledger.entry,
  ordinal integer NOT NULL,
  rule text NOT NULL,
  kind text NOT NULL,
  subject bigint NOT NULL,
  operation text,
  why text NOT NULL,
  signed_at timestamptz NOT NULL,
  PRIMARY KEY (entry, ordinal)
);
COMMENT ON COLUMN holds.rule_pass.operation IS 'the operation it is good for; absent for whatever is done with the thing';
CREATE INDEX ON holds.rule_pass (rule, kind, subject);
CALL ledger.keep_as_history('holds.rule_pass');

CREATE TABLE quality.operation_not_done (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  unit bigint NOT NULL REFERENCES production.unit,
  operation text NOT NULL,
  why text NOT NULL
);
COMMENT ON TABLE quality.operation_not_done IS 'a person signed that a unit goes on without an operation of its route';
CREATE INDEX ON quality.operation_not_done (unit);
CALL ledger.keep_as_history('quality.operation_not_done');
