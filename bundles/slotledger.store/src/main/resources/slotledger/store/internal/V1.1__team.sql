-- Only for PostgreSQL: who may do what, kept by the database itself and not by the programs that use it. The names of
-- the roles hold for the whole server, as PostgreSQL has it; what they may do is said for this database alone.

do $$
declare
    name text;
begin
    foreach name in array array['slotledger_coordinator', 'slotledger_procurement', 'slotledger_technician',
            'slotledger_reader'] loop
        if not exists (select from pg_roles where rolname = name) then
            execute format('create role %I nologin', name);
        end if;
    end loop;
end $$;

-- The user of the database who wrote an entry, whatever name stands in the entry.
alter table entry add column login name not null default session_user;

revoke all on all tables in schema slotledger from public;
grant usage on schema slotledger
    to slotledger_coordinator, slotledger_procurement, slotledger_technician, slotledger_reader;
grant select on all tables in schema slotledger
    to slotledger_coordinator, slotledger_procurement, slotledger_technician, slotledger_reader;
grant insert on project to slotledger_coordinator;
grant insert on original, original_piece
    to slotledger_coordinator, slotledger_procurement, slotledger_technician;
grant insert on entry to slotledger_coordinator, slotledger_procurement, slotledger_technician;

-- Nothing is ever changed or deleted, by the owner neither.
create function nothing_is_changed() returns trigger language plpgsql as $$
begin
    raise exception 'What is written in a project is never changed or deleted; an entry is taken back by another one.'
        using errcode = 'insufficient_privilege';
end $$;

create trigger nothing_is_changed before update or delete or truncate on project
    for each statement execute function nothing_is_changed();
create trigger nothing_is_changed before update or delete or truncate on original
    for each statement execute function nothing_is_changed();
create trigger nothing_is_changed before update or delete or truncate on original_piece
    for each statement execute function nothing_is_changed();
create trigger nothing_is_changed before update or delete or truncate on entry
    for each statement execute function nothing_is_changed();

-- An entry follows the one before it without a gap, and its seal is right: as in EntryRow.sealAfter.
create function sealed(value text) returns bytea language sql immutable as $$
    select convert_to(octet_length(convert_to(value, 'UTF8')) || ':' || value, 'UTF8')
$$;

create function entry_must_follow() returns trigger language plpgsql set search_path = slotledger, pg_temp as $$
declare
    seal_before text := '';
    made_utc timestamp := new.made at time zone 'UTC';
    made_text text;
begin
    new.login := session_user;
    if new.number > 1 then
        select seal into seal_before from entry where project = new.project and number = new.number - 1;
        if not found then
            raise exception 'Entry % can''t be written, because there is none before it.', new.number
                using errcode = 'check_violation';
        end if;
    end if;
    made_text := to_char(made_utc, 'YYYY-MM-DD"T"HH24:MI:SS')
        || case when to_char(made_utc, 'MS') = '000' then '' else to_char(made_utc, '.MS') end || 'Z';
    if new.number < 1 or new.seal <> encode(sha256(sealed(seal_before) || sealed(new.number::text) || sealed(made_text)
            || sealed(new.who) || sealed(new.why) || sealed(new.kind) || sealed(new.change)), 'hex') then
        raise exception 'Entry % can''t be written, because its seal is wrong.', new.number
            using errcode = 'check_violation';
    end if;
    return new;
end $$;

create trigger entry_must_follow before insert on entry for each row execute function entry_must_follow();

-- Who has the project open is told at once.
create function tell_the_others() returns trigger language plpgsql as $$
begin
    perform pg_notify('slotledger', new.project || ' ' || new.number);
    return null;
end $$;

create trigger tell_the_others after insert on entry for each row execute function tell_the_others();

-- What each role may write. Whoever may write a kind of entry may take one back, too.
create function procurement_may(kind text, change text) returns boolean language sql immutable as $$
    select kind = 'traded' or kind = 'imported'
        and not exists (select from json_object_keys(change::json -> 'parts') part where part <> 'offers')
$$;

create function technician_may(kind text, change text) returns boolean language sql immutable as $$
    select kind = 'worked'
$$;

-- The entry that one of the kinds "taken back" and "restored" is about; runs as the owner, because a policy on a table
-- may not ask the same table.
create function entry_meant(project_id text, kind text, change text) returns table (kind_meant text, change_meant text)
    language sql stable security definer set search_path = slotledger, pg_temp as $$
    select e.kind, e.change from entry e where $2 in ('taken back', 'restored') and e.project = $1
        and e.number = ($3::json ->> 'entry')::bigint
$$;

alter table entry enable row level security;

create policy everybody_reads on entry for select
    to slotledger_coordinator, slotledger_procurement, slotledger_technician, slotledger_reader using (true);
create policy coordinator_writes on entry for insert to slotledger_coordinator with check (true);
create policy procurement_writes on entry for insert to slotledger_procurement with check (
    procurement_may(kind, change) or exists (select from entry_meant(project, kind, change)
        where procurement_may(kind_meant, change_meant)));
create policy technician_writes on entry for insert to slotledger_technician with check (
    technician_may(kind, change) or exists (select from entry_meant(project, kind, change)
        where technician_may(kind_meant, change_meant)));
