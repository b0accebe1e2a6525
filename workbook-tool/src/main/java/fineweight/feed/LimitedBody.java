package fineweight.feed;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.Flow;

/** Takes the bytes of an answer and breaks off where there are too many. */
final class LimitedBody implements HttpResponse.BodySubscriber<byte[]> {
  private final int most;
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final CompletableFuture<byte[]> body = new CompletableFuture<>();
  private Flow.Subscription subscription;

  LimitedBody(int most) {
    this.most = most;
  }

  /** The answer is larger than is read. */
  static final class TooLarge extends IOException {
    private static final long serialVersionUID = 1L;
  }

  @Override
  public CompletionStage<byte[]> getBody() {
    return body;
  }

  @Override
  public void onSubscribe(Flow.Subscription given) {
    subscription = given;
    given.request(1);
  }

  @Override
  public void onNext(List<ByteBuffer> buffers) {
    for (ByteBuffer buffer : buffers) {
      if (bytes.size() + buffer.remaining() > most) {
        subscription.cancel();
        body.completeExceptionally(new TooLarge());
        return;
      }
      byte[] part = new byte[buffer.remaining()];
      buffer.get(part);
      bytes.write(part, 0, part.length);
    }
    subscription.request(1);
  }

  @Override
  public void onError(Throwable trouble) {
    body.completeExceptionally(trouble);
  }

  @Override
  public void onComplete() {
    body.complete(bytes.toByteArray());
  }
}
