CREATE TABLE `photos` (
	`hash` text PRIMARY KEY NOT NULL,
	`type` text NOT NULL,
	`width_px` integer NOT NULL,
	`height_px` integer NOT NULL,
	`bytes` blob NOT NULL
);
--> statement-breakpoint
CREATE TABLE `plate_photos` (
	`truck` text PRIMARY KEY NOT NULL,
	`hash` text NOT NULL,
	`plate` text NOT NULL,
	`revision` integer NOT NULL,
	FOREIGN KEY (`hash`) REFERENCES `photos`(`hash`) ON UPDATE no action ON DELETE no action
);
