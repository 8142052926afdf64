//! The patient's encrypted database: one file per table, migrations, backup.
