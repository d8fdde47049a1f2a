package org.standproud.assessment.idempotency;

import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.standproud.assessment.Assessor;
import org.standproud.assessment.SetupRequest;
import org.standproud.audit.records.RecordNotStored;
import org.standproud.audit.records.Records;
import org.standproud.audit.records.StoredRecord;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;

/**
 * Judges a request with a key once, however often it is sent.
 *
 * <p>A key is stored in the transaction of its record, so that after a crash there is either the
 * answer under its key or nothing. Only answers are stored: a refused request leaves nothing
 * behind, and is judged when it is sent again. Of two replicas that judge the same request with the
 * same key at once, the second to commit returns the answer of the first.
 */
public final class IdempotentAssessor {

  private final Assessor assessor;
  private final Records records;
  private final IdempotencyKeyRepository keys;
  private final Set<IdempotencyKey> inProgress = ConcurrentHashMap.newKeySet();

  /**
   * Creates the assessor.
   *
   * @param assessor judges requests
   * @param records the records
   * @param keys their keys
   */
  public IdempotentAssessor(Assessor assessor, Records records, IdempotencyKeyRepository keys) {
    this.assessor = assessor;
    this.records = records;
    this.keys = keys;
  }

  /**
   * Answers a request, or returns its stored answer.
   *
   * @param request the request
   * @param caller who asks
   * @param key the key; null to judge it in any case
   * @throws KeyReusedException if the key belongs to another request
   * @throws KeyInUseException if a request with this key is being answered
   * @throws Refusal with 410 if the answer was removed since
   * @throws InterruptedException if interrupted before the answer was known to be stored
   */
  public Assessor.Answered assess(SetupRequest request, String caller, @Nullable IdempotencyKey key)
      throws InterruptedException {
    if (key == null) {
      return assessor.assess(request, caller, records::append);
    }
    String fingerprint = request.canonical().sha256();
    if (!inProgress.add(key)) {
      throw new KeyInUseException(key.value());
    }
    try {
      Optional<Assessor.Answered> before = before(key, fingerprint);
      return before.isPresent() ? before.get() : first(request, fingerprint, key);
    } finally {
      inProgress.remove(key);
    }
  }

  private Assessor.Answered first(SetupRequest request, String fingerprint, IdempotencyKey key)
      throws InterruptedException {
    try {
      return assessor.assess(
          request,
          key.caller(),
          (record, numbers) ->
              records.append(
                  record,
                  numbers,
                  () ->
                      keys.keep(
                          key, new IdempotencyKeyRepository.Entry(fingerprint, record.id()))));
    } catch (RecordNotStored e) {
      return before(key, fingerprint).orElseThrow(() -> e);
    }
  }

  private Optional<Assessor.Answered> before(IdempotencyKey key, String fingerprint) {
    return keys.find(key).map(entry -> answer(entry, key, fingerprint));
  }

  private Assessor.Answered answer(
      IdempotencyKeyRepository.Entry entry, IdempotencyKey key, String fingerprint) {
    if (!entry.fingerprint().equals(fingerprint)) {
      throw new KeyReusedException(key.value());
    }
    StoredRecord stored = records.find(entry.record()).orElseThrow();
    if (stored.gone()) {
      throw new Refusal(RefusalKind.GONE, RefusalKind.GONE.meaning());
    }
    return new Assessor.Answered(stored.record());
  }
}
