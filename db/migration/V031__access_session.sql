-- The tables of spring-session-jdbc, so that any instance knows who is signed in.
CREATE TABLE access.session (
  primary_id char(36) PRIMARY KEY,
  session_id char(36) NOT NULL UNIQUE,
  creation_time bigint NOT NULL,
  last_access_time bigint NOT NULL,
  max_inactive_interval integer NOT NULL,
  expiry_time bigint NOT NULL,
  principal_name varchar(100)
);
CREATE INDEX ON access.session (expiry_time);
CREATE INDEX ON access.session (principal_name);

CREATE TABLE access.session_attributes (
  session_primary_id char(36) NOT NULL REFERENCES access.session ON DELETE CASCADE,
  attribute_name varchar(200) NOT NULL,
  attribute_bytes bytea NOT NULL,
  PRIMARY KEY (session_primary_id, attribute_name)
);
