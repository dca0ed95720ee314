package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is kept between two questions. */
class RecentPackingsTest {

  @Test
  void keep_beyondTheSize_forgetsWhatWasNotAskedForLongest() {
    RecentPackings recent = new RecentPackings(PackedStore.NONE, 12);
    recent.keep("a", "1111");
    recent.keep("b", "2222");
    assertThat(recent.find("a")).contains("1111");

    recent.keep("c", "3333");

    assertThat(recent.find("b")).isEmpty();
    assertThat(recent.find("a")).contains("1111");
    assertThat(recent.find("c")).contains("3333");
  }

  @Test
  void keep_ofOneKeyAgain_countsItOnce() {
    RecentPackings recent = new RecentPackings(PackedStore.NONE, 10);

    for (int i = 0; i < 5; i++) {
      recent.keep("a", "111" + i);
    }

    assertThat(recent.find("a")).contains("1114");
  }

  @Test
  void find_ofWhatIsKeptBeyond_asksThereOnceAndTellsIt() {
    RecentPackings beyond = new RecentPackings(PackedStore.NONE, 1000);
    beyond.keep("old", "text");
    RecentPackings recent = new RecentPackings(beyond, 1000);

    assertThat(recent.find("old")).contains("text");
    recent.keep("new", "more");

    assertThat(beyond.find("new")).contains("more");
    assertThat(recent.find("unknown")).isEmpty();
  }
}
