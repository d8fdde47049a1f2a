package org.standproud.api.idempotency;

import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.ErrorResponseException;
import org.standproud.api.assessing.Assessor;
import org.standproud.api.assessing.SetupRequest;
import org.standproud.api.problem.KeyInUse;
import org.standproud.api.problem.KeyReused;
import org.standproud.audit.store.RecordNotStored;
import org.standproud.audit.store.Records;
import org.standproud.audit.store.StoredRecord;

/**
 * Judges a request with a key once, however often it is sent.
 *
 * <p>A key is put on disk in the transaction of its record, so that after a crash there is either
 * the answer under its key or nothing. Only answers are kept: a request that was refused left
 * nothing behind, and is judged when it is sent again. Of two services that judge the same request
 * with the same key at once, one finds at the end that the other was first, and gives the answer of
 * the other.
 */
public final class OnceOnly {

  private final Assessor assessor;
  private final Records records;
  private final KeptKeys keys;
  private final Set<IdempotencyKey> inProgress = ConcurrentHashMap.newKeySet();

  /**
   * Judging once.
   *
   * @param assessor judges
   * @param records the records
   * @param keys the keys beside them
   */
  public OnceOnly(Assessor assessor, Records records, KeptKeys keys) {
    this.assessor = assessor;
    this.records = records;
    this.keys = keys;
  }

  /**
   * Answers a request, or gives the answer that it got before.
   *
   * @param request the request
   * @param caller who asks
   * @param key names the request; null to judge it in any case
   * @throws KeyReused if the key stands for another request
   * @throws KeyInUse if a request with this key is being answered
   * @throws ErrorResponseException with 410 if the answer was taken away since
   * @throws InterruptedException if interrupted before the answer was known to be on disk
   */
  public Assessor.Answered assess(SetupRequest request, String caller, @Nullable IdempotencyKey key)
      throws InterruptedException {
    if (key == null) {
      return assessor.assess(request, caller, records::append);
    }
    String fingerprint = request.canonical().sha256();
    if (!inProgress.add(key)) {
      throw new KeyInUse(key.value());
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
                  () -> keys.keep(key, new KeptKeys.Entry(fingerprint, record.id()))));
    } catch (RecordNotStored e) {
      return before(key, fingerprint).orElseThrow(() -> e);
    }
  }

  private Optional<Assessor.Answered> before(IdempotencyKey key, String fingerprint) {
    return keys.find(key).map(entry -> answer(entry, key, fingerprint));
  }

  private Assessor.Answered answer(KeptKeys.Entry entry, IdempotencyKey key, String fingerprint) {
    if (!entry.fingerprint().equals(fingerprint)) {
      throw new KeyReused(key.value());
    }
    StoredRecord stored = records.find(entry.record()).orElseThrow();
    if (stored.gone()) {
      throw new ErrorResponseException(HttpStatus.GONE);
    }
    return new Assessor.Answered(stored.record());
  }
}
