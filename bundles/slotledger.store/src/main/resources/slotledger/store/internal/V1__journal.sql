-- One SQL for H2 and PostgreSQL: no auto-increment, no large objects, no words of one of them.

create table project (
    id varchar(36) primary key
);

-- Files as they were brought in, told apart by their bytes, in pieces small enough for any driver.
create table original (
    project varchar(36) not null references project,
    sha256 varchar(64) not null,
    size bigint not null,
    primary key (project, sha256)
);

create table original_piece (
    project varchar(36) not null,
    sha256 varchar(64) not null,
    number integer not null,
    bytes bytea not null,
    primary key (project, sha256, number),
    foreign key (project, sha256) references original
);

-- Only ever added to. Two people who write the same number at once collide on the key, and one looks again.
create table entry (
    project varchar(36) not null references project,
    number bigint not null,
    made timestamp(3) with time zone not null,
    who varchar(200) not null,
    why varchar(4000) not null,
    kind varchar(40) not null,
    change varchar(1000000) not null,
    seal varchar(64) not null,
    primary key (project, number)
);
