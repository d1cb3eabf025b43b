/** The commonest words of English talk, which stand for all that is no command. */
const WORDS = `
the a of to and in is you he it i for that was his on an with be are not as they this have by all
she your at we but her from if my when one will or can no out what do there who up had me has so
were their like man don't people time about him into only more good than it's new get just would
them never life some which our two know how make over been well down after go said any way work many
now always first could world its day then other old may too think long very should must off see most
take every love got wall made right little these much back because great us where before say things
men law does through even want did nothing why those something being children system years without
use you're three last can't better thing around here going away between light night car own water
still computer used come money give mind house home am put such best left bad really need enough
problem ever person find young high same another tell took each that's went look woman gave call
child cannot let while hard room keep under thought anything job once head year end live book
someone face human small big war found came words program real again set free run larry place hand
doesn't called name dead play everything against few until number wrong air country change done
please days next word linux asked women power government eyes times didn't point language often food
part true there's large side yet line full state john makes i've death try far read today friends
heart question sure might several course turn feel upon i'll rather himself believe lost sun door
lot dog
`;

export const DECOYS: readonly string[] = WORDS.trim().split(/\s+/);
