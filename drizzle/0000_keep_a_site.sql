CREATE TABLE `changes` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`at` text NOT NULL,
	`who` text NOT NULL,
	`kind` text NOT NULL,
	`noun` text NOT NULL,
	`subject` text NOT NULL,
	`before` text,
	`after` text
);
--> statement-breakpoint
CREATE TABLE `items` (
	`load` text NOT NULL,
	`ordinal` integer NOT NULL,
	`name` text NOT NULL,
	`mass_kg` real NOT NULL,
	`count` integer NOT NULL,
	PRIMARY KEY(`load`, `ordinal`),
	FOREIGN KEY (`load`) REFERENCES `loads`(`id`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
CREATE TABLE `loads` (
	`id` text PRIMARY KEY NOT NULL,
	`ordinal` integer NOT NULL,
	`name` text NOT NULL,
	`pallet_type` text,
	`gross_kg` real,
	`mass_basis` text NOT NULL,
	`depth_mm` real NOT NULL,
	`width_mm` real NOT NULL,
	`height_mm` real NOT NULL,
	`centre_from_heel_mm` real,
	`centre_height_mm` real,
	`picks_per_week` real,
	`group` text,
	`pick_mass_kg` real,
	`pick_horizontal_mm` real,
	`pick_grip_height_mm` real,
	`pick_destination_height_mm` real,
	`pick_asymmetry_deg` real,
	`pick_lifts_per_minute` real,
	`pick_duration_hours` real,
	`pick_coupling` text,
	FOREIGN KEY (`pallet_type`) REFERENCES `pallet_types`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `loads_on_pallet_type` ON `loads` (`pallet_type`);--> statement-breakpoint
CREATE TABLE `pallet_types` (
	`id` text PRIMARY KEY NOT NULL,
	`ordinal` integer NOT NULL,
	`depth_mm` real NOT NULL,
	`width_mm` real NOT NULL,
	`tare_kg` real NOT NULL,
	`entry_height_mm` real NOT NULL
);
--> statement-breakpoint
CREATE TABLE `stock` (
	`location` text PRIMARY KEY NOT NULL,
	`ordinal` integer NOT NULL,
	`load` text NOT NULL,
	FOREIGN KEY (`location`) REFERENCES `locations`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`load`) REFERENCES `loads`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `stock_of_load` ON `stock` (`load`);--> statement-breakpoint
CREATE TABLE `aisles` (
	`id` text PRIMARY KEY NOT NULL,
	`ordinal` integer NOT NULL,
	`clear_width_mm` real NOT NULL,
	`overhead_clear_mm` numeric,
	`sprinkler_mm` numeric
);
--> statement-breakpoint
CREATE TABLE `bays` (
	`run` text NOT NULL,
	`ordinal` integer NOT NULL,
	`id` text NOT NULL,
	`clear_width_mm` real NOT NULL,
	`max_bay_load_kg` real,
	PRIMARY KEY(`run`, `ordinal`),
	FOREIGN KEY (`run`) REFERENCES `runs`(`id`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
CREATE UNIQUE INDEX `bay_in_run` ON `bays` (`run`,`id`);--> statement-breakpoint
CREATE TABLE `docks` (
	`id` text PRIMARY KEY NOT NULL,
	`ordinal` integer NOT NULL,
	`x_mm` real NOT NULL,
	`y_mm` real NOT NULL
);
--> statement-breakpoint
CREATE TABLE `frame_ratings` (
	`frame_type` text NOT NULL,
	`ordinal` integer NOT NULL,
	`max_gap_mm` real NOT NULL,
	`capacity_kg` real NOT NULL,
	PRIMARY KEY(`frame_type`, `ordinal`),
	FOREIGN KEY (`frame_type`) REFERENCES `frame_types`(`id`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
CREATE TABLE `frame_types` (
	`id` text PRIMARY KEY NOT NULL,
	`ordinal` integer NOT NULL
);
--> statement-breakpoint
CREATE TABLE `frames` (
	`run` text NOT NULL,
	`ordinal` integer NOT NULL,
	`id` text NOT NULL,
	`type_id` text NOT NULL,
	`condition` text NOT NULL,
	PRIMARY KEY(`run`, `ordinal`),
	FOREIGN KEY (`run`) REFERENCES `runs`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`type_id`) REFERENCES `frame_types`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `frames_of_type` ON `frames` (`type_id`);--> statement-breakpoint
CREATE UNIQUE INDEX `frame_in_run` ON `frames` (`run`,`id`);--> statement-breakpoint
CREATE TABLE `levels` (
	`run` text NOT NULL,
	`bay` integer NOT NULL,
	`ordinal` integer NOT NULL,
	`level` integer NOT NULL,
	`beam_top_mm` real NOT NULL,
	`beam_height_mm` real NOT NULL,
	`pair_capacity_kg` real,
	`depth_positions` integer NOT NULL,
	`max_unit_kg` real,
	`decked` integer NOT NULL,
	`condition` text NOT NULL,
	PRIMARY KEY(`run`, `bay`, `ordinal`),
	FOREIGN KEY (`run`,`bay`) REFERENCES `bays`(`run`,`ordinal`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
CREATE TABLE `locations` (
	`id` text PRIMARY KEY NOT NULL,
	`run` text NOT NULL,
	`bay` integer NOT NULL,
	`level` integer NOT NULL,
	`ordinal` integer NOT NULL,
	FOREIGN KEY (`run`,`bay`,`level`) REFERENCES `levels`(`run`,`bay`,`ordinal`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
CREATE UNIQUE INDEX `location_in_level` ON `locations` (`run`,`bay`,`level`,`ordinal`);--> statement-breakpoint
CREATE TABLE `runs` (
	`id` text PRIMARY KEY NOT NULL,
	`ordinal` integer NOT NULL,
	`aisle_id` text NOT NULL,
	`frame_depth_mm` real NOT NULL,
	`x_mm` real,
	`y_mm` real,
	`heading_deg` real,
	FOREIGN KEY (`aisle_id`) REFERENCES `aisles`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `runs_of_aisle` ON `runs` (`aisle_id`);--> statement-breakpoint
CREATE TABLE `policy_values` (
	`key` text PRIMARY KEY NOT NULL,
	`value` text NOT NULL,
	`changed_by` text NOT NULL,
	`changed_at` text NOT NULL
);
--> statement-breakpoint
CREATE TABLE `site` (
	`only` integer PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`revision` integer NOT NULL,
	CONSTRAINT "one_site" CHECK("site"."only" = 1)
);
--> statement-breakpoint
CREATE TABLE `authorisations` (
	`operator` text NOT NULL,
	`ordinal` integer NOT NULL,
	`kind` text NOT NULL,
	`expires` text,
	PRIMARY KEY(`operator`, `ordinal`),
	FOREIGN KEY (`operator`) REFERENCES `operators`(`id`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
CREATE TABLE `checks` (
	`ordinal` integer PRIMARY KEY NOT NULL,
	`truck` text NOT NULL,
	`at` text NOT NULL,
	`by` text NOT NULL,
	`result` text NOT NULL,
	FOREIGN KEY (`truck`) REFERENCES `trucks`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `checks_of_truck` ON `checks` (`truck`);--> statement-breakpoint
CREATE TABLE `defects` (
	`check` integer NOT NULL,
	`ordinal` integer NOT NULL,
	`text` text NOT NULL,
	PRIMARY KEY(`check`, `ordinal`),
	FOREIGN KEY (`check`) REFERENCES `checks`(`ordinal`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
CREATE TABLE `operators` (
	`id` text PRIMARY KEY NOT NULL,
	`ordinal` integer NOT NULL,
	`name` text NOT NULL
);
--> statement-breakpoint
CREATE TABLE `plate_ratings` (
	`truck` text NOT NULL,
	`ordinal` integer NOT NULL,
	`mast` text NOT NULL,
	`attachment` text,
	`lift_height_mm` real NOT NULL,
	`load_centre_mm` real NOT NULL,
	`capacity_kg` real NOT NULL,
	PRIMARY KEY(`truck`, `ordinal`),
	FOREIGN KEY (`truck`) REFERENCES `trucks`(`id`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
CREATE TABLE `trucks` (
	`id` text PRIMARY KEY NOT NULL,
	`ordinal` integer NOT NULL,
	`name` text NOT NULL,
	`kind` text NOT NULL,
	`power` text NOT NULL,
	`max_lift_mm` real NOT NULL,
	`lowered_mm` real,
	`extended_mm` real,
	`free_lift_mm` real,
	`reach_depth` integer NOT NULL,
	`turning_outside_radius_mm` real,
	`turning_load_distance_mm` real,
	`turning_inside_offset_mm` real,
	`stated_aisle_mm` real,
	`fork_length_mm` real,
	`fork_arm_capacity_kg` real,
	`fork_arm_load_centre_mm` real,
	`fitted_attachment` text,
	`hold_since` text,
	`hold_reason` text,
	`travel_mps` real,
	`lift_mps` real,
	`plate_vertical_load_centre_mm` real
);
