package fineweight.identification.candidate;

import fineweight.clue.lexicon.Face;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Some standards, found by their faces without a look at every one. Filled once, then only read.
 */
final class Shelf {
  private final List<Profile> profiles = new ArrayList<>();
  private final Map<Profile, Integer> places = new HashMap<>();
  private final Map<Face, List<Profile>> byFace = new HashMap<>();

  void add(Profile profile) {
    places.put(profile, profiles.size());
    profiles.add(profile);
    profile
        .faces()
        .forEach(face -> byFace.computeIfAbsent(face, unused -> new ArrayList<>()).add(profile));
  }

  /** All of them, in the order of the catalogue. */
  List<Profile> profiles() {
    return profiles;
  }

  /** Those that have one of the faces, in the order of the catalogue. */
  List<Profile> withAny(List<Face> faces) {
    Set<Profile> found = new LinkedHashSet<>();
    faces.forEach(face -> found.addAll(byFace.getOrDefault(face, List.of())));
    return found.stream().sorted(Comparator.comparing(places::get)).toList();
  }
}
