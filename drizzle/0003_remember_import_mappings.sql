CREATE TABLE `import_mappings` (
	`signature` text NOT NULL,
	`list` text NOT NULL,
	`mapping` text NOT NULL,
	`used_by` text NOT NULL,
	`used_at` text NOT NULL,
	PRIMARY KEY(`signature`, `list`)
);
