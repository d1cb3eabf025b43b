/**
 * The commonest words of English talk, which stand for all that is no command: counted over sayings and a dictionary's
 * examples, but for what the voices say that measure the ears.
 */
const WORDS = `
the a of to is and in you it he i for that was his on be with are not an they have as your all this
we by she if but at when her my one will can from no do what who there out had has up or so their
were man me don't like people more than only time about never it's good into him get just life them
some two new would know our always how make after which been over down way many go any well work too
world may first its other day now very most should law much love see think must take every long
could i'm men want then nothing things old before something does back made off where little got us
great because did these through even right without being thing you're say those children better
can't why use own money between last going give three around still years away house put bad night
enough system home need car am come person here anything each cannot young best woman computer find
took ever same light problem mind left gave end another really tell water live used once went again
keep god someone human found everything change that's small doesn't wrong hard let under against
while face makes real child look such war call until high there's big job dead play came thought
program place few room done head today women death set isn't didn't run doing year believe often lot
both friends feel hand true said book name next air game others knows free else heart side try
himself truth please living read called having several together days government door yet nature
whole words might far upon mother wife eyes line yourself less business point country lost help
company large turn
`;

export const DECOYS: readonly string[] = WORDS.trim().split(/\s+/);
