/*
 * The few calls that the app makes of PocketSphinx: one decoder, whole utterances, results as plain text.
 *
 * Grammars are kept by name, so one utterance can be decoded under several. Words come into the dictionary one by one,
 * as grammars need them: loading all 134,000 would cost a phone a second and 40 MB.
 */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <emscripten.h>
#include <pocketsphinx.h>
#include <sphinxbase/ckd_alloc.h>
#include <sphinxbase/err.h>
#include <sphinxbase/fe.h>

#define MOST_OPTIONS 64
#define NOTHING_HEARD ""

static ps_decoder_t *decoder;
static char *answer;
static size_t room;
static size_t length;

static void append(char const *text)
{
    size_t more = strlen(text);
    if (length + more + 1 > room) {
        room = 2 * (length + more + 1);
        answer = ckd_realloc(answer, room);
    }
    memcpy(answer + length, text, more + 1);
    length += more;
}

/* Opens the decoder with PocketSphinx's own options, parted by single spaces. 0: it is open. */
EMSCRIPTEN_KEEPALIVE int ear_open(char const *options)
{
    char *argv[MOST_OPTIONS];
    int argc = 0;
    char *copy = ckd_salloc(options);
    cmd_ln_t *config;

    err_set_logfp(NULL);
    for (char *word = strtok(copy, " "); word && argc < MOST_OPTIONS; word = strtok(NULL, " "))
        argv[argc++] = word;
    config = cmd_ln_parse_r(NULL, ps_args(), argc, argv, FALSE);
    ckd_free(copy);
    if (!config)
        return -1;
    if (decoder)
        ps_free(decoder);
    decoder = ps_init(config);
    cmd_ln_free_r(config);
    return decoder ? 0 : -1;
}

/* Teaches a word, its sounds parted by single spaces. Below 0: a sound is unknown, or the word is there already. */
EMSCRIPTEN_KEEPALIVE int ear_add_word(char const *word, char const *sounds)
{
    return ps_add_word(decoder, word, sounds, FALSE);
}

/* 1: the decoder knows the word. */
EMSCRIPTEN_KEEPALIVE int ear_knows(char const *word)
{
    char *sounds = ps_lookup_word(decoder, word);
    int known = sounds != NULL;
    ckd_free(sounds);
    return known;
}

/* Keeps a grammar (JSGF) under a name, in the place of the one before. Below 0: it cannot be read, or a word is unknown. */
EMSCRIPTEN_KEEPALIVE int ear_set_grammar(char const *name, char const *jsgf)
{
    return ps_set_jsgf_string(decoder, name, jsgf);
}

static void append_segments(void)
{
    char line[256];
    for (ps_seg_t *seg = ps_seg_iter(decoder); seg; seg = ps_seg_next(seg)) {
        int first, last;
        int32 acoustic, language, back;
        ps_seg_frames(seg, &first, &last);
        ps_seg_prob(seg, &acoustic, &language, &back);
        snprintf(line, sizeof line, "\n%s\t%d\t%d\t%d\t%d", ps_seg_word(seg), first, last, (int) acoustic, (int) language);
        append(line);
    }
}

/*
 * Decodes one whole utterance of 16 kHz samples under a grammar. Line 1: score of the best path, frames, words.
 * Then a segment a line: word, first and last frame, acoustic score, language score. Empty: nothing fits.
 */
EMSCRIPTEN_KEEPALIVE char const *ear_decode(char const *name, int16 const *samples, int count)
{
    char line[64];
    int32 score = 0;
    char const *words;

    length = 0;
    append(NOTHING_HEARD);
    if (ps_set_search(decoder, name) < 0 || ps_start_utt(decoder) < 0)
        return answer;
    ps_process_raw(decoder, samples, (size_t) count, FALSE, TRUE);
    if (ps_end_utt(decoder) < 0)
        return answer;
    words = ps_get_hyp(decoder, &score);
    if (!words)
        return answer;
    snprintf(line, sizeof line, "%d\t%d\t", (int) score, ps_get_n_frames(decoder));
    append(line);
    append(words);
    append_segments();
    return answer;
}

/*
 * The features (MFCC) of an utterance, for matching by template: writes at most `most` frames into `features` and gives
 * how many there are, or below 0 what went wrong. `ear_feature_size` values a frame.
 */
EMSCRIPTEN_KEEPALIVE int ear_features(int16 *samples, int count, float *features, int most)
{
    fe_t *fe = ps_get_fe(decoder);
    mfcc_t **frames = NULL;
    int32 found = 0;
    int size = fe_get_output_size(fe);

    if (fe_start_utt(fe) < 0 || fe_process_utt(fe, samples, (size_t) count, &frames, &found) < 0)
        return -1;
    for (int i = 0; i < found && i < most; i++)
        memcpy(features + i * size, frames[i], (size_t) size * sizeof(float));
    if (frames)
        fe_free_2d(frames);
    return found < most ? found : most;
}

EMSCRIPTEN_KEEPALIVE int ear_feature_size(void)
{
    return fe_get_output_size(ps_get_fe(decoder));
}
