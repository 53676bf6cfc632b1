/**
 * The study file: strict reading, stable and safe writing, migrations from every earlier schema.
 *
 * <p>{@link plyworth.shared.store.StudyFile} is the way in; the codecs behind it each turn one part
 * of a study into {@link plyworth.shared.data.Json} and back. The schema lies beside the code as
 * {@code study.schema.json}.
 */
package plyworth.shared.store;
