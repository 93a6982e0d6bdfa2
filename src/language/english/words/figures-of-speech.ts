/** Figures of speech: what stands beside one of these was not meant as it was said. One row a class, read by `phrases.ts`. */
export const FIGURE_WORDS = {
  /** Causes and company that machines do not have. */
  human:
    'of boredom, from boredom, of shame, of embarrassment, of happiness, of joy, of old age, of a broken heart, of laughter, of loneliness, died laughing, of laughing, with laughter, with envy, of envy, dead inside, pay rise, pay raise, overtime pay, the union, caught a cold, has a cold, the flu, the sniffles, man flu, a hangover, hangover, hungover, boyfriend, girlfriend, needs therapy, a therapist, feelings, emotionally, spiritually, mentally, ghosts, a ghost, poltergeist, gremlins, elves, gnomes, pixies, vampires, zombies, goblins, the moon, mars, a banana, boba straw, pure art, pure magic, with my tears, its own nozzle, its own belts, its own wheels, its own plate, its own fan, its own rods, to me',
  /** Said of the whole sentence. */
  unreal:
    "said nobody ever, said no one ever, said no one, said nobody, april fools, april fool, april fool's, in dog years, in my dreams, in your dreams, in his dreams, in her dreams, in a dream, in a perfect world, in an ideal world, in another life, in a parallel universe, in films, in movies, on tv, in the film, in the movie, once upon a time, plot twist, trust me bro, pinky swear, knock knock, figuratively, so to speak, as it were, metaphorically",
} as const;
