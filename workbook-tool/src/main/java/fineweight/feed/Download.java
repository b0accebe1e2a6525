package fineweight.feed;

import fineweight.settings.FeedSettings;
import fineweight.settings.SettingException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Fetches one small JSON document: within a time, up to a size, again after a pause if that may
 * help. Certificates are checked as the platform does; there is no way to turn that off.
 */
final class Download {
  private static final int MOST_REDIRECTS = 5;
  private static final long FIRST_PAUSE_MILLIS = 500;

  private final FeedSettings.Limits limits;
  private final HttpClient client;

  Download(FeedSettings.Limits limits) {
    this.limits = limits;
    this.client =
        HttpClient.newBuilder()
            .followRedirects(HttpClient.Redirect.NEVER)
            .connectTimeout(Duration.ofSeconds(limits.seconds()))
            .build();
  }

  byte[] get(URI address) throws FeedTrouble {
    for (int attempt = 1; ; attempt++) {
      try {
        return follow(address);
      } catch (FeedTrouble trouble) {
        if (!trouble.mayPass() || attempt >= limits.attempts()) {
          throw trouble;
        }
        pause(FIRST_PAUSE_MILLIS << (attempt - 1));
      }
    }
  }

  private byte[] follow(URI first) throws FeedTrouble {
    URI address = first;
    for (int step = 0; step <= MOST_REDIRECTS; step++) {
      HttpResponse<byte[]> answer = ask(address);
      if (answer.statusCode() / 100 != 3) {
        return body(answer);
      }
      address = next(address, answer);
    }
    throw new FeedTrouble("leads on from one address to the next without end", false);
  }

  /** Never from https to plain http, and never from elsewhere to this machine. */
  private static URI next(URI from, HttpResponse<byte[]> answer) throws FeedTrouble {
    String place = answer.headers().firstValue("Location").orElse("");
    try {
      URI to = FeedSettings.address(from.resolve(place).toString(), "redirect");
      if (from.getScheme().equalsIgnoreCase("http") || to.getScheme().equalsIgnoreCase("https")) {
        return to;
      }
    } catch (SettingException | IllegalArgumentException unusable) {
      // Said below.
    }
    throw new FeedTrouble("leads on to an address that is not asked: \"" + place + "\"", false);
  }

  private static byte[] body(HttpResponse<byte[]> answer) throws FeedTrouble {
    int code = answer.statusCode();
    if (code != 200) {
      throw new FeedTrouble("answered with HTTP status " + code, code >= 500 || code == 429);
    }
    String type =
        answer.headers().firstValue("Content-Type").orElse("application/json").split(";", 2)[0];
    if (!type.strip().toLowerCase(Locale.ROOT).matches("(application|text)/(json|[^/]*\\+json)")) {
      throw new FeedTrouble("answered with \"" + type + "\" and not with JSON", false);
    }
    return answer.body();
  }

  private HttpResponse<byte[]> ask(URI address) throws FeedTrouble {
    HttpRequest request =
        HttpRequest.newBuilder(address).header("Accept", "application/json").GET().build();
    CompletableFuture<HttpResponse<byte[]>> answer =
        client.sendAsync(request, head -> new LimitedBody(limits.bytes()));
    try {
      return answer.get(limits.seconds(), TimeUnit.SECONDS);
    } catch (TimeoutException slow) {
      answer.cancel(true);
      throw new FeedTrouble("did not answer in full within " + limits.seconds() + " seconds", true);
    } catch (ExecutionException failed) {
      for (Throwable cause = failed; cause != null; cause = cause.getCause()) {
        if (cause instanceof LimitedBody.TooLarge) {
          throw new FeedTrouble("answered with more than " + limits.bytes() + " bytes", false);
        }
      }
      throw new FeedTrouble(
          "could not be asked (" + failed.getCause().getClass().getSimpleName() + ")", true);
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
      throw new FeedTrouble("could not be asked: the program was stopped", false);
    }
  }

  private static void pause(long millis) {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
    }
  }
}
