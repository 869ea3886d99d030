package etamine.storage.medium;

import etamine.storage.Commit;
import etamine.storage.ModuleFormat;
import java.util.Optional;

/**
 * What a {@link Medium} makes durable in one piece.
 *
 * @param commit changed documents and appended entries, with the revisions they get; at least one of both
 * @param format a module's format to record, with ledgers to make or widen
 */
public record Batch(Optional<Commit> commit, Optional<ModuleFormat> format) {}
