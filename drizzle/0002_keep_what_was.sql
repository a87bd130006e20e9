CREATE TABLE `kept_sites` (
	`change` integer PRIMARY KEY NOT NULL,
	`file` blob NOT NULL,
	FOREIGN KEY (`change`) REFERENCES `changes`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
ALTER TABLE `changes` ADD `batch` integer;--> statement-breakpoint
ALTER TABLE `changes` ADD `whole_site` integer DEFAULT false NOT NULL;--> statement-breakpoint
ALTER TABLE `changes` ADD `reverts` integer;--> statement-breakpoint
ALTER TABLE `changes` ADD `ordinal` integer;--> statement-breakpoint
ALTER TABLE `changes` ADD `ahead` text;--> statement-breakpoint
CREATE INDEX `changes_of_subject` ON `changes` (`noun`,`subject`,`id`);--> statement-breakpoint
CREATE INDEX `changes_of_batch` ON `changes` (`batch`);--> statement-breakpoint
CREATE INDEX `loads_in_order` ON `loads` (`ordinal`);--> statement-breakpoint
CREATE INDEX `stock_in_order` ON `stock` (`ordinal`);--> statement-breakpoint
UPDATE `changes` SET `batch` = `id`, `whole_site` = (`kind` = 'import');
