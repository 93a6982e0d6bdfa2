/**
 * Plain English within a slip or two of a word of the trade, which spelling must leave alone. Written by
 * `npm run words` from SCOWL's lists (English, British, American, sizes 10 to 50); not by hand.
 */
// prettier-ignore
export const PLAIN_ENGLISH =
  'abash abashed abashes abashing abetting abhorred abhorring abject ably aboard abolished abolishes abolishing ' +
  'aboriginal abortion abortions abortive abound abounded abounding abounds abrasions abrasive abridge abridges ' +
  'abridging absolute absolutes absolutest absolved absolves absolving absorbent absorbing abstained abstaining ' +
  'abutted abutting acceding accented accenting accents accessed accessing accident accidents acclaiming ' +
  'accorded accordingly accordion accordions accosted accosting accounted accounting accruing aced aces ache ' +
  'achieved achieves achieving aching acids acing acmes acne acquired acquires acquiring acquisition ' +
  'acquisitions acquitting acre acres actions activate activates actives actuated adapting addend adder ' +
  'addicting addiction addictions additions additive addled addling adhered adherent adjoined adjoining adjudged ' +
  'adjudging adjuring adjuster adjusters admiring adopting adoption adorning advent adverb adverted adverting ' +
  'adverts advising aerating aeration aerosols affect affirmation affirmatively affirmatives afflicted affording ' +
  'aflame afternoons afterward afterword afterwords agape agave aground aided aiding ailing ailments ails aimed ' +
  'aims airings airline airliner airlines airman alarming alas albs alcoholic alcoholics alcoholism alder ' +
  'alerting ales aliasing alibiing alien alienating aliened aliening aliens alighting alights alike allaying ' +
  'alley allied allies allocate allocated allocates allocating allotting allowing alloyed alloying allying alms ' +
  'altering alternately alternation alternations alternative alternatives alto amass amassing ambition amen amid ' +
  'amnesiac amounted amounting amounts amply analogies ancients angels anger angering angers angled angles ' +
  'angling annals annealing annexing announcer announcers annoyance annoyances annoying annual annuals annulled ' +
  'annulling ante anterior antic anticking antis ants apes aphelion apologia apologias apologise apologised ' +
  'apologises apologist apologists apologize apologized apologizes appalling apparent appeals appear appended ' +
  'appending appreciable appreciated appreciates appreciative apprenticed apprentices apps aptly archivist arcs ' +
  'arena arenas ares aria arias arid aright arisen arises arising arks arming armoring army arousing arranged ' +
  'arranging arrant arraying articles ascended ascending ascent ascents ashed ashing asides askew asps ' +
  'assailable assaying assemblage assemblages assembler assemblers assigned assigning assistant assisted ' +
  'assisting assonance assorted assorting assuaging assumed assumes assure assuring astounding atones attached ' +
  'attaching attacking attained attaining attendant attender attends attested attesting attiring attracted ' +
  'attracting attraction attractions attracts attuning auction auctioned auctioning auctions audio audios ' +
  'audition auditions auks autos availing avenging aversion aversions avert averting avid avoidable await ' +
  'awaited awaits awakes awaking awarding awash awes awls axed axles ayes baaed baaing baas babble babbled ' +
  'babbles babbling babe babels babes backaches backer backings backless backrest backrests backslash ' +
  'backslashes backspin backwash badder bade badge badgered badgering badgers badges bagged bagging bailed ' +
  'bailing bails baited baiting baits bakers balancing balded balding balds bale baled bales baling balk balked ' +
  'balking balks ballasting balled balling balloted ballsy balm balms bandaging bandied bandy bandying bane ' +
  'banes bangle bangles banish banished banishes banishing banked banking banner banning banns bantered ' +
  'bantering barb barbed barbing bard bards bared barer bares barf barfed barfing barge barged barging baring ' +
  'barked barking barley barns barometer barometers baronesses barrages barren barrens barrings barrow barrows ' +
  'bartered baseboard based baselines basely baseman baseness bases basin basing bask basked basking bass basses ' +
  'bast basted bastes basting batched batching bate bated bates bather bathers bathos bating bats batted ' +
  'battened battening battered battering batting battled battles battling baud bawls bayed baying bays beached ' +
  'beaches beaching bead beaded beading beady beaked beaker beamed beaming beaning bearable bearding beards ' +
  'beater beaters beatified beatifies beatifying beating beatings beats beau beaus beautifully beautify ' +
  'becalming beckon beckoned beckoning beckons becks becomingly bedding bedeviling bedevilling bedevils bedrolls ' +
  'bedsides bedsores bedsteads bedtimes beeches beef beefed beefing beefs beelines beeper beepers bees beet ' +
  'beetling beets befits befitted befitting begat begetting beggared begged beginnings begs beguiling behalves ' +
  'behavior beheading beholder beholders behooving behove behoved behoves behoving belated belayed belaying ' +
  'belays belch belched belches belching belied believed believer believers belled belling bellow bellowed ' +
  'bellowing bellying belying bemusing bents bequest bequests berating bereaving berm berms berrying berthing ' +
  'besets besetting besieges besotting bested besting betaking bethinking betiding betraying bettered bettering ' +
  'betters betting beveled beveling bevelled bevelling bevellings bevels bewaring bewitched bewitches bewitching ' +
  'bias biases bibs bickered bickering bidding biddy bides biding bids bights biked biking bilge bilges billed ' +
  'billeting billing billion billowed billowing bimonthlies bindings binged binges bingo birching birding ' +
  'bitched bitches bitching bittern biweeklies blab blabbing blabs blacked blacken blackening blackens blacker ' +
  'blackest blacking blackish blackouts blacks blames blanched blanches blanching bland blandest blanked blanker ' +
  'blankest blanketed blanking blankness blanks blare blared blares blaring blaster blasters blasts blazed ' +
  'blazes bleaching bleaker bleated bleating bled bleeding bleep bleeped bleeping bleeps blench blenched ' +
  'blenches blenching blending blends blessing blessings blight blighting blights blinding blinds bling blink ' +
  'blinkered blinkering blinkers blinking blinks blistered blisters bloating bloats bloc blockade blockaded ' +
  'blockades blockading blocs blog blogged bloggers blogging blogs blonds blooding blooming blooms blot blotched ' +
  'blotches blotching blotted blotters blotting blousing blowsy blued bluer blues bluff bluffed bluffing bluffs ' +
  'bluing blunting blunts blur blurt blurting blush blushed blushes blushing blustered blusters boar boarded ' +
  'boars boas boasted boaster boasters boasting boasts boated boating bobbed bobbies bobbin bobbins bobble ' +
  'bobbled bobbling bobby bode boded bodes bodices boding bogey bogged bogging boggles boggling boggy bogies ' +
  'bogs boil boilings bola bolas bole boles boll bolls bolstered bomber bombing bonded boned bones bong bonged ' +
  'bonging bongs boning bonus boob boobed boobing boobs boodle boodles booed booing booked bookend bookie ' +
  'booking bookings bookmarked bookshop boom boomed booming booms boon boons boor boors boos boosted boosting ' +
  'boosts bootee bootless booty boozed boozers boozes boozing bopped bopping bops border bordered bordering ' +
  'borderland borderlines borders borer bores boring borrower borrowers bosh bossed bosses bossiness bossing ' +
  'botch botches botching bottled bottling bottomed bottoming bough boughs bounce bounced bouncer bouncers ' +
  'bouncier bounded bounders bounding bounds bout bouts bowel bowels bowers bowing bowled bowling bowls bowmen ' +
  'boxer boxers boys braced bracelets braces bracing bracken bracketed brads bragged braggers bragging brags ' +
  'braided braiding braids brained braining brainless brainy braising braked braking brambles branched branching ' +
  'branded branding brands bras brash brassy brats braves bravos brawling brawn brayed braying brays breach ' +
  'breached breaches breaching breading breakables breakage breakers breasting breasts breathing breeches ' +
  'breeding breeze breezed breezes breezing breezy brew bricking brides bridged bridging bridle bridles bridling ' +
  'briefer briefings brier briers brig brightened brightening brightens brightly brigs brilliance brilliancy ' +
  'brilliantly brilliants brimmed brimming brindled brings brinks briskets brisking brisks bristle bristled ' +
  'bristles bristling britches brittler broaching broilers broiling broils broker bromides bronzed bronzes ' +
  'bronzing brooding brooked brooking brooms browner brownest brownies brownouts browns browsed browsing bruins ' +
  'bruising brunched brunches brunching bubblier buck bucked bucking buckling budded budding buddings budged ' +
  'budgeted budgie budgies buds buffer buffered buffet bugged bugger buggy bugle bugled bugles bugling bugs ' +
  'builders buildings bulgy bulked bulkiness bulking bulks bulled bulletined bullies bulling bullring bullying ' +
  'bumble bumbled bumbles bumbling bummed bumming bumper bums bunched bunches bunching bundled bundles bundling ' +
  'bungle bungled bungling bunk bunked bunking bunks buns bunt bunted bunting buntings bunts buoying buoys ' +
  'burble burbled burbles burbling burdened burg burgling burgs buried buries burliness burly burner burnouts ' +
  'burp burped burping burps burred burring burro burros burrow burrowed burrowing burrows burs bursting bursts ' +
  'burying bused buses bushed bushel bushels bushiness bushy busied busies businesses busing buss bussed busses ' +
  'bussing buster busters busting bustled bustling busying busyness butch butchered butches buts butt butte ' +
  'buttered buttering buttes butting butts buzzer buzzers bytes cabarets cabbed cabbing cabled cabling cabs ' +
  'caches caching cackle cackled cackles cackling caddying cadger cadre cadres cads cage caged cages caginess ' +
  'caging caking calf calibrator calibrators calibres caliphate caliphates calk calked calking calks caller ' +
  'callings callower callus calmed calming calms calved calving camber cambered cambering cambers camel cameo ' +
  'camped camps canard canaries cancer cancers candled candling candying cane caned canes caning cankered ' +
  'cankering canning cannon canoed canoeing canoes canonised canted canter cantered cantering canters canticle ' +
  'canting cants cape caped capering capers capes capping caps capsuled capsules capsuling captivated captives ' +
  'caramels carat carats carbides carbine carbines carbonated carboy carboys carbs card carded cardinal carding ' +
  'cared careened careening careering caress caresses caressing caret carets careworn caries caring carjacking ' +
  'caroling carollers caromed caroming carousing carp carped carping carps carrel carrels carriageway carrier ' +
  'carriers cartel cartilage cartilages carton cartons carver carvings cased cases caseworker caseworkers cashed ' +
  'cashing casino casinos caster castes casting castings castling casts catcalled catcalling catcher catchers ' +
  'catchier catchings catchy catering cation caulking caved caves caving cavorting cawed cawing caws cede cedes ' +
  'ceilings celebrate celebrated celebrates celebrating celebration celebrations celibate celibates cell cells ' +
  'cements censer censers censor censors censured censures censuring censused censuses censusing centered ' +
  'centering centiliters centilitre centilitres centimes centimeter centrals centred centring ceramics certified ' +
  'certifies certifying cervices cessions chafe chafes chaffed chaffing chaining chaired chairing chalking ' +
  'champing champs chanced chancel chancels chances chancing changeling channeled channeling channelled ' +
  'channelling chanted chanters chanteys chanting chaos chap chaplain chaplains chapped chapping chaps chapters ' +
  'charger chargers charges charging charmed charmers charming charms charring charted chartered chartering ' +
  'charters charting chary chased chases chasing chastened chastening chastens chaster chats chattels chattered ' +
  'chatterer chatterers chattier chatting cheater cheaters cheating checker checkering checkers checkout ' +
  'checkouts checkups cheeked cheeking cheeks cheep cheeping cheeps cheered cheering cheesed cheesing cheesy ' +
  'chefs chemically chequing cherished chess chewer chewy chic chick chickening chicks chiggers chilling chimp ' +
  'chimps chinking chinks chinned chinning chins chipper chirruping chiseled chiseling chit chits chock chocked ' +
  'chocking chocks choke choker chokers chokes choler chomp chomped chomping chomps choosing chopper choppering ' +
  'choppier choppily chord chords chortling chow chowed chowing chows chromes chroming chuckled chuckles ' +
  'chuckling chugging chummed chumming chumps chunks chunky churches churl churls churns cinchona cindered ' +
  'cindering circling circuits circulating circumstance circumstanced citation citing claimant clam clamber ' +
  'clambered clambering clambers clammed clamming clamping clams clan clang clanged clanging clank clanked ' +
  'clanking clanks clans clap clapboard clapboards clapped clappers clapping claps clarinets clash clashed ' +
  'clashes clashing clasping clasps classics classing clattered clauses cleanest cleanings cleanness cleanser ' +
  'cleansers cleanups clearer clearings clearness cleat cleats cleave cleaved cleaves cleaving clefts clement ' +
  'clenched clenches clenching clerical clerking cleverness clewed clewing clews clients climaxing climber ' +
  'climbers climes clinch clinched clinches clinching clinging clingy clink clinked clinkers clinking clinks ' +
  'clipboard clipboards clipper clit clits cloaked cloaking cloaks clod clods cloistered clomp clomping clomps ' +
  'cloned clones cloning clop clopped clopping clops closeness closeout closeouts closer closest closeting ' +
  'closets closures clot clothe clothes clothing clots clotted clotting clotures clouded clouding clouds clove ' +
  'clover clovers cloves clowning clownish cloy cloyed cloying cloys clubbing cluck clucked clucking clucks ' +
  'cluing clump clumping clumps clung clunker clunkers clunkier clunky clustered clustering clusters clutched ' +
  'clutching cluttered cluttering clutters coaching coal coaled coaling coalition coalitions coals coarsen ' +
  'coarser coasted coasters coasting coastline coastlines coasts coaxed coaxing cobble cobbled cobblers cobbles ' +
  'cobbling cobs cock cocked cocking cocks coconuts coda codas coddling coded codex coding coed coeds ' +
  'coefficient coercing coexisting coffer cogently cognition cogwheel cogwheels cohered cohering cohesion ' +
  'cohesive coif coiffing coifs coiling coincident coined coining coins coke coked cokes coking cola coldness ' +
  'colds colicky collages collared collaring collars collated collates collating collation collect collecting ' +
  'collection collections collector collectors collects colleges collide collides colliding colliers collies ' +
  'collisions colloids colluded colludes colluding collusion coloreds coloureds colouring cols colt coma comas ' +
  'combated combating combats combed combined combing combining combs comer comers comet comets comfortably ' +
  'comings commends commented commenting commissioner commissioners commits committed committee committing ' +
  'commonest communed communing commuted commuter commutes commuting compacted compacting compares compassed ' +
  'compassion compelled compelling compete competed competent competes competing compiled compilers compiling ' +
  'complainant complainants complainer complainers complaint complected completer completest completion ' +
  'complexes compliant complied complies complying comported comporting composed composted composting compotes ' +
  'compress compresses comprised comptroller comptrollers computed computes computing concealed concealing ' +
  'conceals conceded concedes conceding conceits conception conceptions concepts concern concerned concerto ' +
  'concertos conch concluding concoction concoctions condemns condense conditional conditionals conditioner ' +
  'conditioners condoled condoling conduced conduces conducing conducted conduction conductive conductors ' +
  'conducts cone cones confection confections confided confides confiding confined confused confuses confusing ' +
  'confuted confutes confuting congaing congestion conjugated conjured conjures conjuring conks connected ' +
  'connecting connective connectives connects conned conning connoting cons consents consequent conserved ' +
  'conserves conserving consisted consistent consisting consoled consoles consoling consonant consonants ' +
  'constable constancy constantly constipate constipates constituted constraint constraints constructions ' +
  'consultant consultants consulted consulting consults consumer consumers contacts contained containing ' +
  'contaminate contaminated contaminates contaminating contended contending contends contentions contents ' +
  'contestant contestants continued contorted contorting contorts contoured contrails contrition contrived ' +
  'contriving controlled controlling contused contuses contusing convection convened convention conventions ' +
  'convents converts convicted conviction convictions convince convinces cooed cooing cooker cookers cookouts ' +
  'coolants cooled coolie cools coop cooped cooper cooperated cooperates cooperating cooperation coopered ' +
  'coopering coopers cooping coops coos cootie copes copped coppers coppery copping cops copses copter cored ' +
  'coring corked corking corm corms cornea corneas corned cornering cornet cornets cornier cornrowed cornrowing ' +
  'corns coroner coroners corps correcter correctest correctional corrections corrective correctly corrector ' +
  'correlated correlating correlation corridors corroded corroding corrosive corrugate corrugates corrupter ' +
  'corruptest corrupting corruption corruptly corrupts corseted corseting cosies cosigned cosigner cosiness ' +
  'costed costing costings costumed costuming cote cotes cots cottoned cottoning couched couches couching ' +
  'counsels countered countering countess counties countless county coupled couples couplet couplets couriers ' +
  'coursing courted courtiers courting courts cove coven covens covering coverings covert coverts coves covet ' +
  'coveted coveting covets covey coveys cowards cower cowered cowering cowers cowhides cowing cowl cowling ' +
  'cowlings cowls cows coyer cozies crab crabbed crabbing cracker crackers crackle crackled crackly crackups ' +
  'cradling crafting crag cram crammed cramming cramped cramping crams craned craning crankier cranks cranky ' +
  'crape crapes crapped crapping craps crass crated cratered cratering crates crating craved cravenly cravings ' +
  'craw crawling craze crazes creakier creamed creaming creamy creased creases creasing created creating ' +
  'creation credos creed creeds creeks creel creels creepier creepily creepy cremating crepe crepes cress crest ' +
  'cresting crests crevices crewed crewing cribbed cribbing crick cricked crickets cricking cricks criers crimes ' +
  'criminal cringing crinkled crinkles crinkling crippled cripples crippling crises crisped crispest crispier ' +
  'crispiest crisping crispness critters croak croaked croaking croaks crock crocked crocks crones crooked ' +
  'crooking crooning cropper crossbeam crossbeams crossbow crossbows crosser crossest crossings crotches ' +
  'crouched crouches crouching croup croupiers crowbars crowding crowned crowning crucibles crude cruet cruets ' +
  'cruising crullers crumb crumbed crumbier crumbiest crumbing crumble crumbles crumblier crumbliest crumby ' +
  'crumpets crumpled crumples crumpling cruncher crunchier crunchiest crush crushes crushing crusted crusting ' +
  'crutch crutches crux cryings crypt cube cubed cubes cubing cubs cuddled cuds cued cues cuffed cuffing cuing ' +
  'cull culled culling culls cults cultured cultures culturing cumming cums cunning cunninger cunt cunts cupped ' +
  'cups curb curbed curbing curbs curd curdled curdling curds curer curie curies curiously curler curlew curly ' +
  'currant currants currency currents curried curries curry currying curs curse cursed curses cursing curt ' +
  'curved curves curving cuss cuttings czar czars dabbled dabbling dactylics daddy dairying dais dallied dallies ' +
  'dallying damages damaging dammed damming damped dampened dampening damping damps dandle dandled dandles ' +
  'dandling dangers dangle dangles dank dappling darkened darlings darn darned darning darted darting dashboard ' +
  'dashboards dashed dashes dashing dating daubed daubing daubs daunting dawdling dawns daybed dazzling ' +
  'deactivated deadlines deaf deafening deafer dealings deals dearly deathbeds deaves debacles debarked ' +
  'debarking debarred debarring debasing debauched debauches debauching debiting debriefing debs debuting decals ' +
  'decamped decamping decanting decay decayed decaying decays deceased deceases deceasing deceive deceived ' +
  'deceiver deceivers deceives deceiving decently deception deceptive decide decides decision decks declaiming ' +
  'declares declaring decline declined decoded decoding decompressed decontamination decoying decreased ' +
  'decreases decreasing decree decrees decrying deducing deduct deducted deducting deductive deducts deeded ' +
  'deeding deemed deepened deepening defacing defaming defaulted defaulter defaulters defeating defecated ' +
  'defecating defect defected defecting defection defectives defector defectors defenced defencing defended ' +
  'defending defensed defensing defensive deferring defiling definers defining deflating deflected deflecting ' +
  'deflector deflectors deflects deforming deforms defraying defter defuse defused defuses defusing degraded ' +
  'degrades degrading dehydration deifying deigned deigning deject dejected dejecting dejects delegating ' +
  'deletion deletions delicate deliverer deliverers deliveries deluding deluging demanded demanding demented ' +
  'demesnes demising demoting demurred denied denominate denominated denominates denominating denomination ' +
  'denoted denoting denounce denounced denounces denouncing dens departed departing depicted depicting deplaned ' +
  'deplanes deplaning deplete depleted depletes depleting deplored deplores deploring deport deported deporting ' +
  'deports deposing deposit deposited depositor depositors depreciate depressed depresses depressing deprived ' +
  'deprives depriving deputing derailed derailing deranged deranging deregulation derided derived derives ' +
  'deriving desalinate desalinated desalinates desalinating desalination descanted descanting descants descended ' +
  'descending descends descried descries descrying deserted deserter deserters deserting deservedly desiccate ' +
  'designated designers desiring desisted desisting desolated desolates desolating despaired despairing despised ' +
  'despising destined destines destroyer destroyers destroys detailed detailing detained detaining detection ' +
  'detective detectives detentes detentions deter determinant determinate determiner determiners determinism ' +
  'deterred deterring deters detest detested detesting detests detonating detract detracted detracting ' +
  'detraction detractor detractors detracts devaluing deviating deviling devilled devilling deviously devise ' +
  'devised devises devising devolved devolves devolving devoting dialings dialled dialling diamonds dibble ' +
  'dibbled dibbles dibbling diced dices dickered dickering diddle diddles diets differed difference differently ' +
  'differing diffident digesting digger digressed digresses digressing diked dikes dilating diligent dill dills ' +
  'diluting dimes dimpled dimples dimpling dims dine dined diners dines dinging dingo dings dingy dining dinned ' +
  'dinning dint dipped directed directive directors direr dirk dirks disarmed disarming disbanded disbanding ' +
  'disbands disbarred disbarring discerned discerning discerns discharged discharging disclosed disclosing ' +
  'discoing discolor discoloring discolors discolour discolours disconcert disconcerted disconcerting ' +
  'disconcerts disconnectedly disconnection disconnections discontent discontented discontenting discontents ' +
  'discord discorded discording discords discount discounted discounting discounts discoverer discoverers ' +
  'discoveries discovery discussing diseased disgorge disgorged disgorges disgorging disgraced disgraces ' +
  'disguising disgustingly dishes dishing dishonored dishonoured disintegrate disintegrates disinter disinters ' +
  'disjoint disjointed disjointing disjoints disk disks dislocate dislocates dismayed dismaying dispensed ' +
  'dispensing dispersed dispersing displace displaces displacing displeased displeasing disported disporting ' +
  'disposal disposes disproved disproving disputed disputing disrobed disrobing disrupting dissed dissemble ' +
  'dissembled dissembles dissembling dissing dissociated distanced distantly distaste distastes distended ' +
  'distending distinct distorter distorts distract distrusting disturbed disusing dithered dithering dittoing ' +
  'dittos ditty diver divers diversions diverted diverting dives diving divisible divots dizzying doable docked ' +
  'docket dockets docking doddered doddering dodge dodged dodges dodging doer doers dogged dogging doggy doings ' +
  'dole doled doling dollar dolling dollop dolloped dolloping dome domes dominating doming donation donations ' +
  'donor donors dons doodle doodles doodling doom doomed dooms dope doped doping dories dork dormer dosed dosing ' +
  'dote doted doth doting dotted dotting doubled doubles doublet doubling doubly doubters doubting douched ' +
  'douches douching dour dousing dove doweling downy doze dozed dozing drab drabs drafted drafting drafts ' +
  'drained drainers draining drakes dram drams draping draughts draughty drawings drawl drawling drawls dray ' +
  'drays dreaded dreadfully dreading dreadlocks dreamer dreaming dreamy dredging dregs drench drenched drenches ' +
  'drenching dressed dressers dressiness dribbler dribblers driblets driest drifter drifters drinkers drinking ' +
  'drinkings drippings drivel driveled driveling drivelling drivels drivings drizzled drizzles drizzling droller ' +
  'drollery drolly droned drones drooled drooling drools droopier droopy droplets dropout dropper droppings ' +
  'dropsy dross drought drovers droves drown drowned drowning drownings drowns drowsing drubbed drubbing ' +
  'drudging drugged drugging drugs drumming drys dubbed dubbing dubs ducal ducat ducats ducked ducking duckling ' +
  'ducks ducting duel duelling duellings dues duet duets dulled dulling dumpling dumpy dunces dune dunged ' +
  'dunging dunked dunking dunning duns duped duping duplicated duplicates duplicator duplicity dusk dusky ' +
  'dustier dustiness dustpans dwarfs dwelling dwellings dwindles dwindling dyed dyeing dyer dyers dyes earned ' +
  'earning earnings earplugs earring earrings eased eases easiness easing easterner easterners eater eaters ' +
  'ebbing echoed eclectic eclectics eclipsing edged edger edgy edict edicts edifying educable effected effecting ' +
  'egocentric egocentrics egresses eighteens eighteenth eighth eighths eighties ejecting eked ekes eking ' +
  'elapsing elastic elastics elated elates elating elected electing elective electors electrically electrify ' +
  'electrocute electrocutes electron electronic electronica electrons elemental eleventh elevenths eliciting ' +
  'elided elides eliding eliminate eliminated eliminates eliminating elimination elopements elopes eloping ' +
  'elusively emailing emanating emended emending emends emergence emergent emit emits emitting emotion emotions ' +
  'emplacement employed employing empowering empowers emptier emptiest emulation emulations enable enacting ' +
  'encase encases enchanted enchanting encloses encoring encounters encrusts encrypted endearing endings ' +
  'endorsing endowing endue endued endues enduing energise energised energises energising enforced engaging ' +
  'engorged enlarge enlarger enlargers enlarges enlisted enlisting enmeshed enmeshes enmeshing enquired enquires ' +
  'enquiring ensemble ensembles enshroud enshrouds ensure ensured ensures ensuring enticing entrants entreating ' +
  'entrusted epistles equaling equating eras eraser erasers erasures erected erecting erection ergs erode erodes ' +
  'erroneously escaping eschewing escorted escorting esquires essaying esteeming ester esters estimable ' +
  'estimation estimations estimator estimators estrange estranged estranging etch etched etches etching etchings ' +
  'evasions evenings evenness eventfully eventual eventuality eves eviction evictions evincing evolving ewes ' +
  'exacting exalting examination examiner examiners exampled exampling exceeded exceeding excelling excels ' +
  'excepted exception exceptional exceptions excerpting excessively excising exciting exclaimed exclaiming ' +
  'exclaims excluded excludes exclusion exclusive exclusives exclusivity excreting excretion excursion ' +
  'excursions excusing executed executing execution exempting exemption exerting exertion exes exhaustion ' +
  'exhausts exhort exhorted exhorting exhorts existent exited exiting exits exorcise exorcised exorcises ' +
  'exorcising exorcism exorcisms exorcist exorcists expanded expanding expectant expecting expedited expediting ' +
  'expelled expelling expend expended expending expends expert expertise experts expiated expiating expire ' +
  'expires expiring explicate exploding exploited exploiting exploits explored exploring explosively exporter ' +
  'exporters expose exposes exposing expressing extension extensions extent extents exterior exteriors ' +
  'exterminate exterminated exterminates exterminating extincted extincting extinction extinctions extincts ' +
  'extinguish extinguished extinguishes extort extorted extorting extorts extradited extraditing extradition ' +
  'extraditions extremer extremes extricated extricating extrication exulting eyeing eyelash eyelashes fabled ' +
  'fables fabricate fabricated fabricates fabricating faced faces facing faction factions factored factors ' +
  'faculty fads fagged fagging fags failings fain fainting fairs fake faked fakers fakes faking fallow fallowed ' +
  'fallowing fallows falter faltered falters famed famished famishes famishing fancied fancier fanciers fanciest ' +
  'fandom fanfares fang fangs fanned fannies fanny fare fared fares faring farmed farmer farming farrow farrowed ' +
  'farrowing farted farther farting fasted fastened fastening faster fasting fastness fated fates fatheads ' +
  'fathered fathering fating fats fatten fattened fattening fattier fauns favours fawns faxed faxes faxing faze ' +
  'fazed fazes fazing feared fearing fearless feasting feasts feat feats featured features featuring feds ' +
  'feebler feebly feedings feelings fees feigning feinting felled feller felling fellows fells felted felting ' +
  'felts fend fended fender fenders fending fends fens ferreting ferry ferrying fest festering fetchingly feted ' +
  'fetishes fetter fettered fettering fetters feud feuding feuds fewest fezzes fiat fiats fibbed fibber fibbers ' +
  'fibbing fibers fibres fibs fickle fictions fiddle fiddles fidgeting fielding fiend fiends fife fifes fifteens ' +
  'fifth fifths fighter fighters fights figments figs figuring filamentous filch filching filet filings filler ' +
  'fillers fillet fillings fills filly filmed filmiest filming filtered filtering finagling finches finders ' +
  'findings fined fines finessed finesses finessing fingering fingernails fingerprint fingerprinted fining finis ' +
  'finises finisher finishers fink finked finking finks finny firearms firewalls firmament firmaments firmer ' +
  'firs firsthand firth firths fisher fishes fists fittingly fiver fixating fixer fixers fizz fizzed fizzle ' +
  'fizzled fizzles fizzling fizzy flab flacks flagging flags flagstones flail flailed flailing flails flak flake ' +
  'flambes flaming flan flanked flanking flanks flap flapped flapper flare flaring flasher flashers flashest ' +
  'flashier flashily flashy flask flatbeds flatfoot flatfoots flatness flattening flattens flattered flatterer ' +
  'flattering flatters flattery flatting flavour flaw flawed flawing flawlessly flaws flax flay flayed flaying ' +
  'flays flea fleck flecking fled flee fleecing fleeing flees fleeting fleshed fleshes fleshing fleshly flexed ' +
  'flexibly flicked flicker flickered flicking flicks flied flier fliers fliest flinched flinches flinching ' +
  'fling flinging flings flints flipped flippers flipping flips flirting flit flits flitted flitting float ' +
  'floated floating floats flocked flocking flocks floe floes flog flogged flogging floggings flogs flood ' +
  'flooding floods flop flopped flopping flops floss flossing flotation flouncing flour flouring flours flouted ' +
  'flouting flouts flowed flowering flubbing fluctuate fluctuated fluffing flukes flume flumes flunked flunking ' +
  'flunks flurry flusher flushest flustered flusters fluttered fluttering flutters fluttery flux fluxes fluxing ' +
  'flysheet foaled foaling foals foam fobbed fobbing fogeys fogged fogging foiling foisting folding follower ' +
  'followers followings folly fonder fondling font fonts fooled fooling fools footed footing footings foray ' +
  'forayed foraying forays forbearing forces forcible forded fording fore forecaster forecastle forecasts ' +
  'foregoing forehand foremast foremasts foremost fores foresight foresting foretaste forfeiting forge forged ' +
  'forger forgers forges forgetting forging forgiving forgo forgoing forked forking formed forming forswear ' +
  'forswears forthright fortnightly fortnights foster fouler foully fouls founded foundered foundering founders ' +
  'founding foundling foundlings founds fount founts fourteens fourteenth fourth fowled fowling foxed foxes ' +
  'foxing fracked fracking fracks fraction fractions fracture frail framer framers franked franking frat frats ' +
  'fraught freaked freaking freaks freaky freckled freckles freckling freeholder freeholders freeloaded ' +
  'freeloading freer freest freewheel freewheels freighting freights frequented frequenter frequenting frequents ' +
  'freshens fresher freshet freshmen fret frets fretting friction friending fries frieze friezes frightened ' +
  'frightening frightens frighting frights fringing frittering fritters frizzed frizzes frizzing frizzling ' +
  'frocks frond fronds fronting frosting frosts froth froths frowned frowning fructified fructifies fructifying ' +
  'frumpy fryers frying fucked fucking fuddled fudged fudges fudging fuel fueling fuelling fuels fulled fulling ' +
  'fumbling fumed fuming functional fund funding funds funked funking funky funnies furbishes furiously furled ' +
  'furling furnaces furnished furnishes furnishing furrowing furrows furs furthermost furthers fury fuss fussed ' +
  'fusses fussiness fussing futz fuzzed fuzzes fuzzing gabbed gabbing gabble gabbled gabbles gabbling gabled ' +
  'gables gabs gadded gadding gads gagged gagging gaggle gaggles gags gained gaining gale gales galled galling ' +
  'galloped gals gambled gambling gamed gamin gaming ganders ganged ganging gangling gape gaped gapes gaping ' +
  'garaging garb garbed garble garbles garbling garbs gardened gardener gargled gargling garnished garnishes ' +
  'garnishing gases gashes gashing gasoline gasp gasped gasping gasps gassed gassing gasworks gated gates ' +
  'gathered gathering gating gauged gauging gauze gavel gavels gays gazed gazing gearing geeing gees geldings ' +
  'gelds gelling genera generals gentians gentling gentries gentry gents geocentric geologies geometer germinal ' +
  'germinate germinated germinates germinating gestated gestates gestating gestured ghastly gibbering gibbon ' +
  'gibbons gibe gibes gibing giblets gifted gifting gigging giggle giggled giggles giggling gild gilded gilding ' +
  'ginned ginning gird girt girts givens glades glads glances glands glared glares glassed glassier glassing ' +
  'glassy glazes gleamings gleaned gleaning gleans glee glib glided glider gliders glinting glints glistened ' +
  'glittered glittering glitters glittery gloaming gloamings gloated gloating gloats glob globes globular ' +
  'globule gloss glosses glossing gloved gloving glowed glowering glowers glows gluey glum glut glutinous gluts ' +
  'glutted glutting gnarling gnash gnashed gnats gnaw goaded goading goats gobbed gobbing gobbler gobblers gobs ' +
  'goggle goggled goggling goings gonged gonging goods goodwill goof goofs googles googling gook gooks goon ' +
  'goons goop gores gorge gorged gorgeously gorges gorging goring gosh goslings gossips gossipy gouger gougers ' +
  'governing grabber graced graceful graces gracing grackle grackles grad graded grades grading grads grafted ' +
  'grafting grains granaries grander grandparent grands granted granting grapes graphing grappling grasped ' +
  'grasping grasps grasses grassing grate grated gratefully grater graters gratings gratis graved graveled ' +
  'graveling gravelled gravelling gravels gravely graven graver graves graving grayed graying grays grazes ' +
  'grazing greasier greats greening greeting greetings greys grid grids griefs grieving grilled grilling grimed ' +
  'grimly grinders grinning grins gripe griped gripes griping grippe gripped grist gritting groins groomed ' +
  'grooming grooms grooves grooving grossed grosses grossing grotto grouched grouches grouching grounder ' +
  'grounders grounding groundings grounds grouping grousing grouting grovel groveling groves growing growl grows ' +
  'grubbed grubbing grueling grumbled grumbler grumblers grumbles grumbling grunge grunting guarantied ' +
  'guaranties guessing guesting guided guiding guilds guineas guises gulled gullies gulling gumming gums gunned ' +
  'gunning gunny guppy gush gushed gushes gushing gusted gusting gusts gutsy guttered guttering guying guys ' +
  'guzzling gyps gyrated gyrates gyrating gyroscope hacked hacking hackle hackles haft hafts haggle haggled ' +
  'haggles haggling hags hailed hailing hails haircuts haired hairlines hairpins hake hakes hale haled hales ' +
  'haling hallow hallowed hallowing halls hallway halo haloed haloing halos halter haltered haltering halters ' +
  'halve halved halves halving hammed hammerhead hammerings hamming hampered hampering hampers hamsters ' +
  'hamstring handfuls handler handlers handy hangar hangars hanged hangings hank hanker hankered hankering ' +
  'hankers hanks happenings harasses hardener hardeners hardening hardness hardy hare hared hares haring hark ' +
  'harked harking harmed harming harmonised harnessed harp harped harping harried harries harrowed harrowing ' +
  'harry harrying harts hashed hashes hashing hasp hassling hasted hastened hastening hastes hasting hatched ' +
  'hatching haters hating hatted hatters hatting haughty hauler haunch haunches haunting haven havens hawing ' +
  'haws haying hazes hazing headed header headers headgear headier heading headings headlock headlocks healer ' +
  'healers heaped heaping hearer hearers hearings hearkened hearse heartbreak heartbreaks heartened hearts ' +
  'heathens heather heave heaved heavens heaves heavies heaving heckling heed heeded heeding heeds heeled ' +
  'heeling hefting heighten heightened heightening heightens heir heirs heisting helms helper helpings hemlines ' +
  'hemmed hemming hemp hems hens herb herbs herds hereupon heritages herring herrings hesitant hesitate ' +
  'hesitated hesitatingly hesitation hesitations hewing hideaways hies hightail hightails hilt hilts hims hind ' +
  'hindered hindering hinds hinged hinging hinting hipped hipping hiring hissed hitched hither hive hives hiving ' +
  'hoard hoards hoarse hobbit hobble hobbled hobbles hobbling hobo hobos hocked hocking hockshop hods hoed ' +
  'hoeing hoes hogged hogging hogs hoisting hokey holdings holing holler hollered hollering hollers hollow ' +
  'hollowed hollower hollowest hollowing hollowly hollows hologram holograms homer homering homers homey homeys ' +
  'hominy hone honed hones honeying honing honked honking honoring honoured hooded hooding hooey hoof hoofed ' +
  'hoofs hooked hooker hookers hooking hooks hoop hooped hooping hoops hoot hooted hooter hooters hooting hoots ' +
  'hooves hopper hopping hording horizontally horizontals horns horoscopes horribly horridly horrors horses ' +
  'horsing hosed hosing hosting hounded hounding hounds houses hove hovels hover hovered hovering hovers howled ' +
  'howler hubs huddled huddling hues huffed huffing hugged hugging hugs hulking hulled hulling humbling hummed ' +
  'humoring humorous humour hump humped humping humps humus hunched hunches hunching hundreds hungered hungers ' +
  'hunk hunted hurdling hurled hurling hurrying hurting hushed hushes hushing huskiness hustings hustling ' +
  'hutches huts hydrated hydrates hydrating hype hyped hypes hyphened hyphening hyping identically ides idled ' +
  'idles idly idolater idolaters igniting ignominy ignorant imagined imagines imaging immaculately immolated ' +
  'immolates immolating impaired impairing impartially impelled impelling impended impending imperfectly ' +
  'implicate implying imported importing importunity imposing impossibly imprecision impressed impressing ' +
  'imprinted imprinting imprints improperly inaction inactive inboards incensed incensing inception inched ' +
  'inching incidence incidences incidental incidentals incipient incising inciting inclines inclining ' +
  'inclusively incoming incomplete incompletely inconsistency inconsistently inconstant incorrectly incubation ' +
  'inculcation indented indenting indicative indicted indicting indifferent indigent indigents indisposed ' +
  'indivisible inducing inductee inducting induction inert infected infecting infection infections inferior ' +
  'inferiors infernal inferred infested infesting infighting inflammable inflated inflates inflating inflation ' +
  'inflected inflecting inflection inflections inflects inflexible informed infrequently infusing ingested ' +
  'ingesting inhalation inhaling inherent inhering inheritor inheritors initialing initialled initialling ' +
  'initials injected injecting injection injections injuring inking inkling inklings inlaying inline innings ' +
  'inoculation inputs inquests inquired inquires inquiring inquisition inquisitions insect insects insecurity ' +
  'inserted inserting insertion insertions inset insets insetting insider insiders insistent insolvents ' +
  'inspection inspections inspector inspectors instance instanced instances instancing instants instil instill ' +
  'instilled instilling instills instils instructing instruction instructional instructors insulated insulates ' +
  'insulating insulator insulted insulting insuperable insure insuring integral integrals intendeds intenser ' +
  'intent intents interact intercept intercom intercoms interest interject interlace interlaces interlink ' +
  'interlinks interlocked interment intermittently internal internals interned internee internees interning ' +
  'internist internment interns interpret interred interring inters intersect intimate intimated intimates ' +
  'intimating intolerable intolerance intoning intranet intruded intruder intruders intrudes intruding intrusion ' +
  'intrusions intuitive invective invented inventing inventor inventoried inventors inversions invert inverted ' +
  'inverting inverts invested investing investor investors invincible invisibly inviting inwards irises ironing ' +
  'irregularly irrelevant isle islet islets isms isolation issued itch itched itches itching iterated iterates ' +
  'iterating iteration jabbing jabs jacked jacking jading jagged jags jailed jailing jamb jambs jangle jangled ' +
  'japing jarred jarring jaunting jawing jaws jays jeered jeering jelling jellying jerk jerkin jerkins jested ' +
  'jesting jests jetted jetting jeweling jewelled jewelling jibbed jibbing jibs jigged jigger jiggered jiggering ' +
  'jigging jiggle jiggled jiggling jigs jilt jilted jilting jingle jingled jingles jingling jitterbug jitterier ' +
  'jitters jiving jobbed jobbing jogger joggled joggles joggling johns jointed jointing joker jokers jollying ' +
  'jolting jolts jottings jounce jounced jounces jouncing jousting joyed joying joys judged judges judging ' +
  'jugged jugging juggled juggles juggling jugs jumbling jumpy junction junctions jungles junker junket jury ' +
  'juster justness jute juts jutted jutting keel keeled keeling keels keening keens kelp kennel kernels ketches ' +
  'kicker kicky killer killings kilned kilning kilt kilter kilts kindle kindling kinds kingly kings kinking ' +
  'kinky kissed kisses kissing kite kith kiting kitten knack knacker knacks kneeling knelling knickers knighting ' +
  'knightly knights knobbier knobbiest knobby knocker knockers knockout knockouts knot knotted knotting knowings ' +
  'knuckling koshered labeling laboring lacing lacked lactated lactates lactating laddered laddering laded ' +
  'lading lads lager lagers lagged lagging lags lamed lamely lamenting lamer lamest laminate laminates ' +
  'laminating lamination laming lammed lamming lamppost lampposts lanced lancing lander landings landline ' +
  'landlines lanes lank lapel lapels lapped lapping laps larches lard larded larding lards larked larking ' +
  'lasagnes lash lashed lashes lashing lass lasses latent lath lathed lathered lathering lathing latrines lats ' +
  'latterly laud lauded lauding lauds launcher launchers laundered laundering lavished lavishes lavishing lawful ' +
  'lawless laws lawyer lawyers laxer laxest layering lazing lazying leached leaches leaching leaded leading ' +
  'leafed leafing leaflets leafs leafy leakages leaned leanings leaped leaping leaps leas leashing leasing ' +
  'leaved leaven leavening leavens leavings lectured lecturing ledges leeching leek leeks leer leered leering ' +
  'lefty legends legged legging leguminous lemma lending lends lens lenses lessened lest lettered lettering ' +
  'levee levees leveler levelers leveller levellers levered levering levitated levitates levitating lewd ' +
  'libation libations libelers libeling libelled libelling libels liberated liberates liberating liberation lice ' +
  'licked licking lickings lids lied liens lifelike lifeline lifelines lifer lifers ligament ligaments lighted ' +
  'lighten lightened lightening lightens lighters lightly lightning liked likeness liker liking lilt lilted ' +
  'lilting lilts limbless limed limes liming limn limned limning limo limply limps limy lineal linen linens ' +
  'linger lingering lingers liniment liniments linked linker linking links lipreading lips lire lisp listed ' +
  'listened listener listeners listings listless lite liter liters lithe littered littering litters liveliness ' +
  'livelong livelongs lively liven livening livens livers livest livid livings loader loaf loafed loafing loafs ' +
  'loam loaned loaner loaning loans loathing loathings loaves lobbed lobbing lobbying lobe lobed lobes lobs ' +
  'locale locales location locations locket lockets lockouts loco locus lode lodes lodged lodger lodges lodging ' +
  'loft lofted lofting lofts loge loges logger login logon logos loin loins lolling lone loner loners longed ' +
  'longing longs lookout lookouts loomed loon loons looped looping loopy loosed looser looses loosing loot ' +
  'looted looter looting loots lope loped lopes loping lopsidedly lorded lording lordly lords lore lorn losers ' +
  'losses lotion lotions lotus lounging louse louses lousiness lout louver louvered loveless loveliness lovers ' +
  'lowered lowering lowing lows lubber lubrication lubricator lubricators lucked lucking lulled lulling ' +
  'lumbering luminously lumped lumping lunched lunching lunchtimes lunged lunges lunging lungs lurching lure ' +
  'lured lures luring lushes lushness lust lusted luster lustiness lusting lusts lute lutes lynching mace maces ' +
  'machetes machined machinery machinist macing macron macrons maddened mads magnesia magnetise magnetism ' +
  'magnetize magneto magnetos maids mailed mailing maiming maims mainline mainlined mainlining mainsail ' +
  'mainsails maintainer maintainers makings males malign maligned maligning maligns malted malteds malting malts ' +
  'manacling managers mandating mandrill mandrills mane manes mange manger mangers mangle mangled mangles ' +
  'mangling mangy manholes manly manned mannered mans manses mansions mantling manuals manufacture manufactured ' +
  'manufacturers manufactures manuring mapped mapping maraca marbled marching mare mares marginalia marginally ' +
  'mariners marker markings marred marriages marries marring marrying mars marsh mart martial marts mash mashed ' +
  'masher mashers mashes mashing masked masking massage massaged massages massaging massed masses massing mast ' +
  'mastered mastering masts matched matching mates math mating matins matt matted mattered mattering matters ' +
  'mattes matts maturing mauled mauling maundered maundering maws maxed maxes maxing mead meals meandered ' +
  'meandering meanings meaty mechanic mechanics mechanise mechanised mechanises mechanize mechanizes meddle ' +
  'meddled meddles meditated meditates meditating meekly megs meld melded melding melds mellow mellowed mellower ' +
  'mellowing menacing menage menages mender menses mentored mentoring menus mere meres mesa mesas mescaline ' +
  'mesdames messing metabolic metals mete meted meteor meteors metering metes meting metro metros mettle mewing ' +
  'mews mica microfiche middies midges miens migrated migrates migrating migration migrations mike miked mikes ' +
  'miking miler milers milfs milked milking milled miller millet milliliter millions mils mime mimed mimes ' +
  'miming mince mincing minded minding minds mined miners mines mingle mingled mingles mingling mini mining ' +
  'minis mink minks minoring minster minting minuet minuets minuses minuted minuter minutest minuting minx mires ' +
  'miring mirroring misbehavior miscount miscounted miscounting miscounts miser mishandle mishandled mishandles ' +
  'mishandling mislaying mislead misleads misled misplay misplayed misplaying misplays misreads mistakes ' +
  'mistaking misted mistimed misting mists misty mistype mistypes misused misuses misusing mite miter mitering ' +
  'miters mites mitres mitt mitten mixer mixes moan moats mobbed mobbing mobs mobster mock mocked mocker mockers ' +
  'mocking mocks modal modals mode modem modems moderated moderates moderating moderation modes modules moires ' +
  'moister moisturise moisturize molder moldered moldering molders molding mole moles molted molting molts moms ' +
  'monger mongered mongering mono monsters monument mooching mooed mooing mooned mooning moons moor moorings ' +
  'moors moos mooted mooting mope moped mopes moping moppet mores mornings morns moron moroseness morrow morrows ' +
  'mortal mortals moss mosses mossy mote motel motels motes moth mothered mothering mothers moths motioned ' +
  'motioning motivated motocross motorcade motorcades motorcar motorcars motorcycle motorcycles motoring ' +
  'motorise motorises motorize motorizes motormouth motormouths mottle mottles mottling moulded mouldered ' +
  'mouldering moulders moult moulted moulting moults mound mounded mounding mounds mountains mountings mourning ' +
  'mousiness mousing moussing mouthing mouths movements movers mowing mows mucked mucking mucus muddied muddle ' +
  'muddles muffed muffin muffing mugged mugging mulched mulches mulching mules mulled mulling mullion ' +
  'multiplayer multiple multiples multiplex multiplexer multiplied multipliers multiplies mumbling munches ' +
  'munchies munition munitions murdered murdering murk murks murky muscling mush mushed mushes mushiness mushing ' +
  'mushy musing musk muskiness musky muss mussed musses mussing mussy muster mustered mustering musters ' +
  'mustiness musts mutating mutation muter mutinous mutt muzzling myths nabbed nabbing nabs nagged nailed ' +
  'nailing nape napped napping naps narrated narrating narrowed narrowing natty naught naughts nearby nearing ' +
  'neater neatly necked necking necklines necks needled needless needling needy negating neighboured neighbourly ' +
  'neighs nerd nerds nervously nested nesting nestling nets netted netting nettle nettled nettles nettling ' +
  'neutering newel newsletters newsy newt nibble nibbler nibbles nibbling nibs nicety niches nickels nieces ' +
  'nigger niggle niggled niggles niggling nigh nigher nines nineteens nineteenth nineties nipper nipple nipples ' +
  'nitrated nitrates nitrating nits node nodes nodule noes noised noisier noisiest nonmember noodled nooses ' +
  'nosed nosedive nosedives nosiness nosing nosy notation notations nothings notifying notion notions nought ' +
  'novice novices nowise nubs nude nudes nuked numbs numerals nuns nurtured nutted nutting nuzzles nuzzling ' +
  'nylons oafs oaring obit obits objection objections observant observer observers obsessed obsesses obsessing ' +
  'obstructions obtruded obtrudes obtruding obverses occluding odder offering officers ogled ogling oilier ' +
  'oinked olives omen omens omission omissions omitted omitting oncoming onrushing onus oodles oozed opal opener ' +
  'openings operable operands operatic operationally operations operative operatives operator operators opined ' +
  'opining opponent opponents opportunism opportunist opportunists opposing oppressed oppressing options opts ' +
  'oral orated orates orating ordained ordaining orderings ores orienting orifices originally originals ' +
  'originate oscillate oscillated oscillation oscillations oscillator oscillators otters ounces oust ousted ' +
  'ouster ousters ousting outages outdoing outfoxing outgrowing outlined outlines outlining outlives outlying ' +
  'outrage outrider outriders outriggers outshines outsider outsiders outsizes outskirts outvoting ovals ovaries ' +
  'overacted overacting overages overalls overate overawed overawes overawing overbear overbearing overbears ' +
  'overbite overboard overcoat overcoats overeat overeaten overeating overeats overextended overextending ' +
  'overfull overgrowing overhand overhands overhang overhangs overhauled overhead overheads overhear overhearing ' +
  'overhears overhung overkill overland overlay overlong overnights overrated overrates overrating overreact ' +
  'overreacted overreacting overreacts override overripe overrule overrules overrun overseas overseeing ' +
  'overselling oversells oversexed overshoe overshoes overshoot oversight oversights oversize overstated ' +
  'overstating oversupplies oversupply overt overtime overtly overturns overweening overweight ovoids owes owls ' +
  'owning oxen paced paces pacing packer packers pact pacts padded padding paddling paged pager pagers pained ' +
  'paining painless pains paired pairing palaces palate palates paled paler pales paling pall palled palling ' +
  'palls pals palsying paltry pamper pampered pampering pampers pandered panderer pandering panders pane ' +
  'panelled pang pangs panhandle panhandled panhandler panhandlers panhandles panhandling panned panniers ' +
  'panning pant panted panting pantries pantry papering papery paps parables parading parallax paralleled ' +
  'parallels parceled parceling parcelled parcelling parcels parch parched parches parching pardoned pare pared ' +
  'parenting pares paring parishes parka parkas paroling parred parried parries parring parrying pars parse ' +
  'parsed parses parsing partiality partials participle particles partied partings partisan partisans partition ' +
  'partridge partridges partying passably passages passel passels passer pasted pasterns pastes pastiche pasting ' +
  'pastries pasts pastured pastures pasturing patchier pates pathos pats patted pattered pattering patterned ' +
  'patting paunch paunches pauper paupers pavement paves paving pawing paws payer payers paying pays peaces ' +
  'peaches peaked peaking pealed pealing peals pearlier pearling pearly peas pebbled pebbles pebbling pebbly ' +
  'peck pecked pecking pecks pecs pedaling pedalling peddling pedometer pedometers peed peeing peeks peelings ' +
  'peep peeped peeper peeping peeps peers pees peeved peeving pegs pelleting pelted pelting pended penis pens ' +
  'pension pensioned pensioner pensioners pensioning pensions pent pentameters peons peopled peoples peopling ' +
  'pepped pepping peps percales perceived perceives perceiving percents perception perching percolated ' +
  'percolating perdition perfected perfecter perfects perforate perforates perforating perforce performer ' +
  'performers perfumed perfuming periling perilled perilling perilously perimeter perishes perishing perk perked ' +
  'perking perks peroxided perplexes persisted perspires pert pertly perusing perverted perverting pester ' +
  'pestered pestling pests petered petering peters petitioned petitioner petitions petrified petrifies ' +
  'petrifying pets petted petting pews philters phishers phishing phosphorescence photoing pica picker picket ' +
  'picketing pickets pickings pickle pickled pickles pickling picky pictures picturing piddle piddles piddling ' +
  'pied pieing pierce pierced pierces piercing pies pigged pigging piglets pigs piing pike piked pikes piking ' +
  'pilaster pilasters pilings pill pillaging pilled pilling pillion pillorying pillowed pillowing pills piloting ' +
  'pimp pimped pimping pimple pimps pined pines ping pinged pinging pings pinheads pinhole pining pinked pinking ' +
  'pinks pinned pinning pinwheel pinwheels piped piper pipers pipes piping pipped pippin pipping pips pirating ' +
  'piss pissed pisses pissing pitched pitcher pitching pitied pits pittance pittances pitting placating ' +
  'placement placer placers placid placket plackets plaguing plaice plains plaited plaiting planked planking ' +
  'planner planners plannings planters plantings plasterer plasterers plastering plasticity plateful platen ' +
  'platens platformed plating platter platters plaudits players pleading pleads pleasing pleasured pleasures ' +
  'pleasuring pleated pleating pledging plied plight plighting plights plop plopped plopping plops plots plotted ' +
  'plotting ploughmen plowing ploy ploys pluckier plucky plum plumb plumbing plumbs plumed plumes plump plumped ' +
  'plumping plumps plums plunge plunger plunges plunging plunk plunked plunking plunks pluses plush plying ' +
  'poaching pocked pocking pockmark pockmarks pocks podding poets pointed pointer pointers pointing pointy ' +
  'poises poker pokers pokey pokeys poky poled poles policies policing poling polisher polishers polities poll ' +
  'polled polling polls pollsters pols polymers pomp ponder pondered pondering ponders pone pones pony pooching ' +
  'poodle poodles pooh poohs pooled pooling pooped pooping pope popes pore pored pores poring pork ported porter ' +
  'porting portioned portioning portly ports posed poser posers posh posher posing posit positioned positioning ' +
  'posits posses possibles postal postcode postcodes posted postmarked posy potholes potion potions potted ' +
  'pottered pottering potting pouched pouches pouching pounce pounced pounces pouncing pounded pounding pout ' +
  'pouting pouts powdered powdering powdery powerless poxes prairies praising prancers prancing prate prated ' +
  'prates prating prattle prattled prattles prattling prawning prayed praying prays preach preached preaches ' +
  'preaching preachy preambled preambles preambling preceded preceding precious preciously precises preclusion ' +
  'predated predates predating predetermine predetermined predetermines predetermining preening prefaced ' +
  'preferred prefixes preheated preheating premise premised premises premising prep preparation prepares ' +
  'preparing prepaying preppies prepping preps presaged presaging presented presenter presenting preserve ' +
  'preserved preserver preserves preserving preset presets presetting presided presides presiding pressings ' +
  'pressured pressuring pressurise pressurises pressurize pressurizes presumable presumes presuming pretension ' +
  'pretensions prettied pretties prettified prettifies prettifying prettying prevented preventing preview ' +
  'previewed previewer previewing previews preys priceless prick pricking prickled pricklier prickliest pricks ' +
  'primed primer primes primped primping primps princess printable printings priories priors priory prise prises ' +
  'prising pristine proactive probating probation probed procedural procedures processing production productions ' +
  'productive profanes profaning professing profiled profiling profited profiting projectile projection ' +
  'projections projects prolixity promisingly promoted promotes promoting prompted prompting prong prongs ' +
  'proofing properer property proposed proposes proposing propped propping prorated prorating prosecuted ' +
  'prosecution prosecutions prospected prospective protected protecting protectively protector protectors ' +
  'proteins protested protesting protracted protracting protraction protracts provident provider providers ' +
  'provides providing provision provisos provosts prowled prowlers prowling prowls prudently prying psst ' +
  'psyching published publishes publishing puck pucks pudding puddled puffer puffin puffins puffy pugs puke ' +
  'puked pukes puking puller pullers pullet pullets pulp pulped pulping pulps pulpy pulsed pulses pulsing puma ' +
  'pumas pumper punched punches punching punished punishes punishing punk punks punned punning puns punsters ' +
  'punter punting punts puny pupped pupping pups purchaser purchasers puree pureed purees purified purifies ' +
  'purifying purl purled purling purls purports purposing purred purring pursed purses pursing purvey purveyed ' +
  'purveying purveys pusher pushers pushiness pushover pushovers pushy puss pusses putt putted puttered ' +
  'puttering putters putts puttying puzzling pwns quacking quad quailing quake quaked qualified qualifier ' +
  'qualifiers qualifies quantities quarrying quashed quashes quashing quavered quavering quavers queening ' +
  'queering quelling quenched quenches quenching questing quests quibbled quibbles quibbling quickness quids ' +
  'quieting quiets quilting quip quipping quips quirking quisling quiver quizzing quoit quoiting quoits quota ' +
  'quotation rabid raced races racial racing racy radials radical radishes raffling rafts raga ragas raged rages ' +
  'raggedy ragging raging raider railed railing railings raised raises raisin raising raked raking rallied ' +
  'rallies rallying rambling ramps ranching ranged ranger rangers ranging rangy ranked ranking rankings rankling ' +
  'ranks ransom rant ranted ranting rape raped rapes rapids raping rapped rapping rapports raps rapture raptures ' +
  'rared rares raring rasher rashers rashes raspy raster rated ratified ratifies ratifying rating rats ratted ' +
  'ratting rattler rattlers rattlings ratty raunchy ravaging rave raved raveling ravelled ravelling ravellings ' +
  'ravels ravening raves raving ravished ravishes ravishing rays razed razes razing reacted reactions ' +
  'reactivated reactive readiest readjustment readjustments readmits readying realised realises realising ' +
  'realists realities realized realizes realizing reallocate reallocated reallocates reallocating realms reamer ' +
  'reap reaped reaping reapplying reaps reared rearing rearm rearmed rearming rearms reasoned reasoning ' +
  'reassigned reassigning reassigns reassure reassured reassures reassuring rebating rebel rebelled rebelling ' +
  'rebels rebinding rebounded rebounding rebounds rebuking rebuses rebut rebuts rebutted rebutting recalled ' +
  'recalling recanted recanting recap recapping recaps recaptured recaptures recapturing recasting receding ' +
  'receipted receipting receipts receiver receivers recenter reception recessed recesses recessing recession ' +
  'recessions recessives reciting reckonings reclaiming reclaims reclined recliner recliners reclines reclining ' +
  'recoil recoiled recoiling recoils recondition reconditioned reconditioning reconditions reconfiguration ' +
  'reconsidering reconvened recopied recopying recorder recorders recordings recouped recouping recoveries ' +
  'recovers recovery recreate recreated recreates recreating recruited recruiting recruits rectal rectifier ' +
  'rectifiers rectories recur recurred recurring recurs redeployed redeploying redesigned redheads rediscover ' +
  'rediscovered rediscovering rediscovers rednecks redoes redoubts redounded redounding redounds redrafted ' +
  'redrafting redrafts redrawing redressed redresses redressing reds reducing reduction reed reeds reef reefing ' +
  'reefs reeked reelected reelecting reelects reeled reeling reenacted reenacting reenacts reentering reentries ' +
  'reeving reexamined reexamines reexamining refereed referral referrals referred referring refers refiled ' +
  'refiling refilled refilling refinance refining refinished refinishes refinishing reflected reflecting ' +
  'reflective reflects refocusing reforested reforesting reform reformed reformer reformers reforming refract ' +
  'refracted refracting refraction refracts refraining refreshed refresher refreshers refreshes refreshing ' +
  'refreshingly refueling refuge refuges refunded refunding refutation refutations refute refuted refutes ' +
  'refuting regained regaining regal regaled regaling regarded regarding registrant registrar registrars ' +
  'registry regressed regresses regressing regretted regretting regularity regulars regulating regulator ' +
  'regulators rehashed rehashes rehashing rehearses reheated reheating reheats rehire rehired rehires rehiring ' +
  'reigning rein reined reinforce reinforces reining reins reinstalled reinstalling reissues rejected rejecting ' +
  'rejection rejoicing rejoinder rejoinders rejoining rekindled rekindling relabeled relabeling relabelled ' +
  'relabelling relabels relapsed relapses relating relation relations relaxant relaxing relayed relaying relays ' +
  'relearned relearns releasable releasing relegate relegated relegates relegating relented relenting relevance ' +
  'relevancy relevantly relieve relieved relieves relieving relished relishes relishing relived reliving ' +
  'relocation reluctance reluctantly remaindered remained remaking remanded remanding remarked remarking ' +
  'remedied remedies remedying reminder remit remits remitted remitting remotes remount remounted remounting ' +
  'remounts remover removers renal renaming rend rendered rendering rending rendition renditions rends renegaded ' +
  'renegading reneged reneging renewable renounce renounced renounces renouncing renovate renovated renovates ' +
  'renovating rented renter renters renting renumbered renumbering renumbers reorging repaid repaint repainted ' +
  'repainting repaints repairmen reparation reparations repartee repayable repaying repealed repealing repeals ' +
  'repeatably repeatedly repeater repeaters repeating repel repelled repelling repels repented repenting repents ' +
  'repetition replacements replayed replaying repleted repletes repleting replicas replicate replicated ' +
  'replicates replicating replying reporter reporters reposing repressed represses repressing reprised reprises ' +
  'reprising reprized reproved reproves reproving reps repulsing reputable reputation reputations reputedly ' +
  'reputing requester requiems requite requited requites requiting rereading rerouted rerouting rerunning ' +
  'rescuing reselling resemble resembled resembles resembling resent resented resenting resents reserved ' +
  'reservedly reserves reserving resetting resettling reside resides residing residual residuals resigned ' +
  'resigning resistance resisted resister resisters resisting resistor resistors resolutely resolver resonances ' +
  'resonant resonate resonated resonates resonating resort resorted resorting resorts resounded resounding ' +
  'resounds respectable respected respecting respects respired respires respiring respondent responses ' +
  'responsive restart restarting restated restates restating rested resting restored restores restoring ' +
  'restricted restricting restricts resultant resulted resulting resuming resupplies resurface resurfaces ' +
  'resurrect resurrects retailed retailing retained retainer retainers retaining retaking retarded retarding ' +
  'retch retched retches retching retelling rethinking retinues retiree retirees retooled retooling retort ' +
  'retorted retorting retorts retouching retrace retraced retraces retracing retraction retractions retrained ' +
  'retraining retrains retreaded retreading retreated retreating retreats retried retries retrieve retrieved ' +
  'retriever retrievers retrieves retrieving retry retrying returnee returnees returning retweeted retweeting ' +
  'retyping reunified reunifies reunifying reusable reuse reused reuses reusing revaluing revealed revealing ' +
  'revealings revel revelation revelations reveled reveling revelled reveller revelling revellings revels ' +
  'revenged revenging revere revered reverend reveres reverie reveries revering reversed reverses reversing ' +
  'reversion reviewer reviewers revile reviled reviles reviling revision revisions revisiting revisits revive ' +
  'revives reviving revoking revolted revolting revolved revolver revolvers revolving revved rewarded rewarding ' +
  'rewinding rewire rewired rewires rewiring reword reworded rewording rewords reworked reworking rewriting ' +
  'rheumatic riced rices ricing rick ricked rickets ricking ricks ridding riddle riddles riddling ridge ridging ' +
  'riding rids rife riffling rifted rifting rigged rigging righter righting riling rill rills riming rimmed ' +
  'rimming rims rind rinds ringed ringers rink rinks ripely ripen ripening riposted riposting ripper rippled ' +
  'rips risen riser risers risible risking risks rivaling riverbed rivers riveting roach roaches roam roamed ' +
  'roaming roams roans roasted roaster roasters robbed robber robbing robin robing rocked rocker rockers rocket ' +
  'rockets roes rogering roil roiled roiling roils roister roistered roistering roisters roles roods rooked ' +
  'rookie rooking rooks roomfuls roomy rooster roosting rooted rooter rooting rootless roped ropes roping rosier ' +
  'rosiness roster rosters rosy rotated rotational rotations rote rotors rotted rotten rotting rouble roubles ' +
  'rouge rouged rouges roughing roughs rouging rounder rounding rouse rouses rousing routed routing routinise ' +
  'routinises routinizes routs rove rovers roweling rowels rowers rubbers rubbery rubbished rubbishy rubble rube ' +
  'rubes rubier rudder rudders rues ruffed ruffing rugby rugged rugs ruing rumbaing rumbled rumbles rumbling ' +
  'rumblings rumoring rumoured rumours rumpling rums runaways rune runes rungs runt runts runway rupture ' +
  'ruptures rupturing ruse rushed rushes rushing rusted rustiness rusting rustling ruts rutted rutting sables ' +
  'sack sacked sacking sacks sacrificial sacs saddened saddling sades safeguard safeguards safely safes saga ' +
  'sagas sage sages sago sailboard sailboards sailed sailing salaaming sales salients sallied sallies sallow ' +
  'sallower sallying salmons salon saloon salted salting saluting salve salved salves salving sames sanction ' +
  'sanctioned sanctioning sanctions sandpapered sandpapers sandpiper sandpipers sands sane sangs sank sans ' +
  'sapped sapping sash sashes sass sassed sasses sassing satchels sate sated sates satiated satin sating satrap ' +
  'satraps saturate saturates saunaing sauntered sauntering saunters savaging saver savers savings savoring ' +
  'savour savouring savvying saxes sayings scab scabbed scabbing scabs scad scads scaled scaling scalloped ' +
  'scalloping scallops scalping scam scammed scamming scams scanner scanners scanted scanting scants scar ' +
  'scarcest scarcity scared scares scarfed scarfing scarified scarifies scaring scarring scars scarves scary ' +
  'scat scathing scats scattered scattering scatters scatting scenting scepters scheduler schedulers scheming ' +
  'schooling scoff scoffed scoffing scold scolding scoldings scones scooping scooting scoped scopes scoping ' +
  'scorcher scorchers scorches scorer scores scorn scorned scorning scotch scotched scotches scotching scourged ' +
  'scourging scout scouted scouting scouts scow scowling scows scrabble scrabbled scrabbles scrabbling scram ' +
  'scramble scrambler scramblers scrambles scrambling scrammed scramming scrams scrappier scratchier scratchiest ' +
  'scratchy scrawled scrawling screeched screechier screechiest screechy screened screening screwier screwy ' +
  'scribbled scribbles scribbling scrimp scrimped scrimping scrimps scrip scrips scripted scripting scrubber ' +
  'scrubbers scrubbier scruff scruffs scrunch scrunched scrunchies scrunchy scrupled scrupling scubaing scudding ' +
  'scuffing scuffled scuffs sculling scumming scuppers scurf scurrying scuttling seabed seagoing sealer seamed ' +
  'seaming seaports searched searches searching seared searing seas seasides seating seceding secluding ' +
  'secondary seconded seconding secreting sect sectioned sectioning sections sects securely securer securest ' +
  'sedated sedating sedition seducing seductive seeded seeding seedling seeds seeings seeking seeks seeming seep ' +
  'seer seers seething segueing selected selecting selective selector selectors self sells selves semen seniors ' +
  'sensed sensory sentries sentry sepal sepals separate separately separates separations separatism separatist ' +
  'separator septa sequester sequined serape serapes serenaded serenading serrated servile servings sessions ' +
  'settees setters settler settlers seventeens seventeenth seventh seventies severing severity sews sexes sexing ' +
  'sexting shabby shack shackled shackles shackling shacks shaded shades shading shadings shadowy shads shafted ' +
  'shafting shag shagged shagging shaggy shags shaker shakers shale shallots shallower shallows shalt sham ' +
  'shambled shambles shambling shamed shames shaming shammed shamming shams shandy shank shanks shantung shapes ' +
  'shaping shared shares sharing sharked sharking sharks sharpened sharpening sharpens sharping shattering ' +
  'shatters shaven shaver shavers sheaf shearer shearing shears sheathings sheave sheaves shedding sheen sheep ' +
  'sheer sheered sheering sheers sheeting shelled shelling sheltered shielded shielding shies shiftier shiftily ' +
  'shifty shilling shillings shimmer shimmered shimmering shimmied shimmies shimmying shin shined shiners shines ' +
  'shingles shingling shining shinned shinning shinny shinnying shins shipped shippers shipping shirkers ' +
  'shirking shirred shirring shirrings shirrs shirted shirting shit shits shitting shiver shivered shivering ' +
  'shivery shoaling shocker shockers shockingly shod shoeing shogun shone shoo shooed shooing shoos shooters ' +
  'shooting shootings shoots shopped shoppers shored shores shoring shortages shortenings shorter shortest ' +
  'shortish shortness shorts shotguns shouldered shouldering shovel shoveled shoveling shovels showdown ' +
  'showdowns showered showering showings showy shred shredder shredders shrew shrewder shrews shriek shrift ' +
  'shrike shrikes shrilled shrilling shrimped shrimping shrink shrinking shrinks shriveled shriveling shriving ' +
  'shrouded shrouding shrub shrubs shrugged shrugging shtick shticks shuck shucked shucking shucks shudder ' +
  'shuddered shun shunned shunning shuns shushing shuttered shuttering shutters shuttling shying sicked sickened ' +
  'sicker sicking sickle sickles sickness sicks sics sidebars sidecars sided sideline sidelines sidewalk ' +
  'sidewalks sidewall siding sidle sidled sidles sift sifted sifter sifting sifts sighed sighing sighs sighting ' +
  'sightings sights signer signet signings silents silicate sill sills silted silting silvered silvering ' +
  'silverware simmered simmering simply sims sine singe singer singers singes singing singled singles singling ' +
  'singly singsong sinkholes sinking sinned sinning sins sipped sipping sips sires siring sises sited siting ' +
  'sittings situated sixteens sixth sized sizes sizing sizzled skate skated skater skaters skeet skein skeins ' +
  'sketched sketches sketching skewer skewing skews skid skidding skids skies skiff skiffs skilled skills skim ' +
  'skimmed skimming skimp skimped skimpier skimping skimps skims skinless skinning skipper skippering skippers ' +
  'skirting skis skit skits skittered skittering skitters skulking skunk skunking skying slab slabbed slabbing ' +
  'slabs slacked slacken slackens slackers slacking slag slags slaked slakes slaking slaloming slam slammer ' +
  'slandered slandering slanders slanting slash slashes slashing slat slated slathered slathering slathers slats ' +
  'slattern slatterns slaved slavered slavering slaves slaving slaw slay slayer slayers slaying slayings slays ' +
  'sled sledding sledge sledges sledging sleds sleeking sleepers sleeping sleeps sleet sleeting sleets sleeves ' +
  'slew slewed slewing slicer slicers slick slicked slicker slickers slicking slickness slicks slider sliders ' +
  'slier slighted slighter slighting slights slim slime slimmed slimming slims sling slinging slings slink ' +
  'slinking slinks slippage slippages slipper slippers slit slits slitting sliver slivered slivering slivers ' +
  'slob slobs sloe sloes slog slogged slogging slogs sloop sloops sloped slopped slopping sloshing sloths slots ' +
  'slouched slouching slough sloughed sloughing sloughs slowed slowing slows slue slues slug slugged slugging ' +
  'sluggishly slugs sluice sluiced sluices sluicing sluing slum slummed slumming slumping slumps slums slung ' +
  'slunk slur slurping slurring slurs slut sluts sluttish smack smacker smackers smacking smalls smarted ' +
  'smartened smartening smartens smarting smarts smash smashes smattering smellier smelted smelters smelting ' +
  'smiles smirched smirches smirching smirking smite smites smiting smock smocked smocking smocks smoggy ' +
  'smokeless smokestack smokestacks smolder smoldered smolders smooch smooched smooching smoothed smoother ' +
  'smoothie smooths smote smothered smothering smoulder smouldered smudge smudges smudging smug smuggest ' +
  'smuggled smuggles smuggling smuts snack snacked snacking snacks snaffling snailing snaked snakes snaking ' +
  'snapper snappers snappier snappish snared snares snarl snarling snatch snatched sneaking sneering sneezing ' +
  'snicker snickered snickering snickers snide snider sniffled sniffling snipe sniped snipes sniping snippet ' +
  'snippier snippiest snit snitch snitched snitches snitching snits sniveled sniveling snooped snooping snore ' +
  'snored snores snoring snort snorted snorting snorts snot snots snotty snout snouts snowed snowing snub ' +
  'snubbing snubs snuff snuffed snuffer snuffing snuffled snuffling snuffs snugger snuggest snuggled snuggles ' +
  'snuggling soak soaked soaking soakings soaks soaped soaps soared soaring sobbed sobbing sobering socked ' +
  'socking softener softeners softening softens softer softy soiled soiling sojourned sojourning sojourns ' +
  'solacing soldiered soldiering soldiers sole soled solider solo soloed sols solvency solver solvers solves ' +
  'someones someway soot sooth soothed soothing sopped sopping soppy sops sorely sores sorrowed sorrowing ' +
  'sorrows sorta sorter sortied sots soughing sought sounder soundest soundless soundness sour soured souring ' +
  'sours sousing sowed sowers sowing sown sows spaces spacey spacier spaded spades spam spammed spammers ' +
  'spamming spams spangles spangling spaniels spank spanked spanking spankings spanks spanned spanning spans ' +
  'spar spared sparer sparest sparing spark sparkled sparred sparring spars sparsely sparser spastics spate ' +
  'spates spatially spats spatted spattered spattering spatters spatting spawn spawning spay spayed spaying ' +
  'spays speaking speared spearing spears speciously speck specking speckling specks sped speeches speeding ' +
  'speedy spelled spellers spelling spellings spells spelt spenders spending spends spew spewed spewing spews ' +
  'spice spiced spices spicing spicy spidery spieling spies spike spiked spilling spilt spindled spindlier ' +
  'spindliest spindling spine spineless spines spinner spinners spiny spiraling spires spiriting spit spited ' +
  'spites spiting spitted splashed splashes splashing splashy splat splats splattered splattering splatters ' +
  'splatting splay splayed splaying splays splice spliced splicer splices splicing splinting splints splittings ' +
  'splurging spluttered spluttering splutters spoiler spoilers spoiling spoils spokes sponger spongers spongier ' +
  'spoof spoofed spoofing spoofs spook spooked spooking spooks spooned spooning spoor spoored spooring spoors ' +
  'spore spored spores sporing sported sporting sports sporty spotlessly spotter spotters spottier spout spouted ' +
  'spouting spouts spraining sprat sprats sprawling sprayer sprayers spreader spreaders spreed spreeing sprig ' +
  'sprightly sprigs springier springing springy sprinkled sprinkles sprinkling sprinted sprinter sprinters ' +
  'sprinting spritzing sprouting sprucest sprucing spry spud spunk spur spuriously spurn spurning spurring ' +
  'spurting sputtered sputtering sputters spying squalled squalling squarer squarest squash squashes squashier ' +
  'squashiest squashing squashy squatted squatters squatting squawk squawked squaws squeakier squealer squealers ' +
  'squeegee squeegeed squeeze squeezer squeezers squeezes squeezing squinted squinter squinting squints squire ' +
  'squired squires squiring squirmed squirming squirms squishier squishiest squishing stabbings stabled stables ' +
  'stabling stacked stacking stacks staffer staffing staffs stag staged staging stagings stags staid staining ' +
  'staircases staked stakes staking staled staler stales staling stalk stalked stalkers stalking stalkings ' +
  'stalks stallion stallions stammered stammering stamping stanch stanched stancher stanches stanchest stanching ' +
  'standings staph stapled stapling starched starches starching stared stares staring stark starless starling ' +
  'starlings starred starring starter starters startled startling starve starves starvings stated stateless ' +
  'stateroom staterooms states stating stationer stationers stationery statistic statistical staunched staunches ' +
  'staunching stave staved staves staving stead steadying stealing steals steamers steamier steams steamy steed ' +
  'steeds steeling steely steeped steeper steeping steeps steer steering steers stemming stems stencils stent ' +
  'stents steppe steppes stepping sterling stew stewed stewing stews stickier stickies stickler sticklers ' +
  'stickpin stickpins stickups sties stiffed stiffen stiffing stiffs stifling stiflings stile stilled stilling ' +
  'stilted stilts stingers stingier stinging stinker stinkers stinting stints stipends stippled stippling ' +
  'stirrers stirring stirrings stoats stockade stockaded stockades stockading stockier stockings stocky stoke ' +
  'stoked stokes stoking stoles stomp stomped stomping stomps stoned stoner stoners stones stoning stools stoop ' +
  'stooped stooping stoops stoppable stopper stoppering stoppers storey storeys storied stories stork storks ' +
  'stormed storming stout stoves stowed strafing straggle straggled straggler stragglers straggles straggling ' +
  'straggly straighter straightest straightness straights strained strainer strainers straining straiten ' +
  'straitened straitening straitens strand stranded stranding strangle strangled strangler strangles strangling ' +
  'strapped strapping strawing straws strayed straying streaked streaking streamed streamer streaming strep ' +
  'stressing stretcher stretchers stretchier stretchiest strew strewed strewing strews striated stricter ' +
  'stridden stride strides striding strife striker strikers strikingly strikings stringent stringer stringers ' +
  'stringiest stripe striping stripling striplings stripper strippers strive strives striving strobes stroked ' +
  'strokes stroking strollers strolling stronger strop stropped stropping strops strumming strung strutting ' +
  'stubbing studding studios stuffed stuffing stumble stumbled stumbler stumblers stumbling stumping stun stunk ' +
  'stunning stuns stunted stunting stunts stutter stuttered stutterer stutterers suave subbed subbing subjects ' +
  'sublimed sublimes subliming subsidies subsidise subsidised subsidises subsidising subsidize subsidized ' +
  'subsidizes subsidizing subsidy subsisted subsisting subsists substitution substitutions subsumed subsumes ' +
  'subsuming succouring sucker suckled suckling suctioned suctioning suctions sued sues suffices sugaring ' +
  'suggester suggestion suggestive suicides suing suite suites suits sulfates sulfides sulk sulked sulks sullies ' +
  'sullying summed summered summering summing sunblock sunblocks sundae sundaes sundered sundering sundowns ' +
  'sundry sung sunless sunning suns super supers supersize supersized supersizes supersizing supervene ' +
  'supervened supervenes supervening supplest supplicate supplied supplier suppliers supplying supported ' +
  'supporter supporters supporting supposes surcease surceased surceases surceasing surfaced surged surges ' +
  'surging surmised surmises surmising surmounted surmounting surmounts surnames surplices surrey surreys ' +
  'surtaxes surveyor survival survivals survivor survivors suspect suspected suspecting suspender suspenders ' +
  'suspense suturing swag swagged swagging swags swam swamped swamping swamps swan swank swanking swanks swans ' +
  'sward swards swarm swarmed swarming swarms swash swashed swashes swashing swat swatch swatches swathing swats ' +
  'swattered swattering swatters swatting sway swayed swaying sways sweating sweats sweepers sweepings sweets ' +
  'swelled swelling swellings swells swerving swift swifts swigged swigging swigs swilling swims swindle ' +
  'swindled swindler swindlers swindles swindling swine swines swinger swirling swisher swishest switcher ' +
  'swiveled swiveling swoon swooning swoop swooped swooping swoops syringed syringes syringing tabbed tabbing ' +
  'tabs tack tacked tacking tackler tacklers tacks tads tailed tailing tailless tainting taker takers takings ' +
  'tales talked talkers talking talks tallyhoing tamed tamers tames taming tamp tamped tampered tampering ' +
  'tamping tamps tams tanager tang tangents tangle tangled tangles tangling tangoing tangos tangs tangy tanked ' +
  'tankers tanking tanks tanned tans tapers tapes tapped tare tared tares targeting taring tarmacking tarnished ' +
  'tarnishes tarnishing tarred tarried tarries tarring tarrying tars tartly tasers tasked tasking tasted tastes ' +
  'tasting tats tatted tatter tattering tatting tattle tattled tattles tattling tattooed taunting tauter taxed ' +
  'taxing teaches teachings teaks teal teals teamed teaming teared teasel teaser teat teats technical ' +
  'technicians tediously teeing teemed tees teetered teetering teethe teethes teething telexing temped ' +
  'temperament temperamentally temperaments temperate template templates tempo tempos tempter tempters tempting ' +
  'tempts tended tendered tendering tending tenements tenoning tens tensed tenses tensing tensor tensors tented ' +
  'tenths tenting tenuring terminable terminally termination terminations terminator terminators terminus ' +
  'termites tern terns terribly terrified terrifies terrifying terrors testable testates tester testes testified ' +
  'testifies testifying testis testy tethered textural texture textures thanked thanking thatched thatches ' +
  'thatching theaters thees therefrom thereupon thermals thermos thicken thickeners thickens thickest thicket ' +
  'thickets thicknesses thieving thimbles thine thinker thinkers thinned thinners thinness thinning thins ' +
  'thirteens thirteenth thirties thistles thongs thou thousands thousandth thralling thrash thrashed thrashes ' +
  'thrashing thrashings threaten threats threshed threshing thrilling thriving throaty throb throbbing throbs ' +
  'throe throes thronging thrum thrumming thud thudding thuds thug thugs thumbed thumbing thumbs thundered ' +
  'thundering thunders thwacking ticker tickers ticketing tickled tickling tics tided tides tidier tidiest ' +
  'tiding tied tighter tightest tights tiled tiles tiling tilled tilling tills tilt timed timeless timer timers ' +
  'timings tine tines ting tinge tinged tingeing tinges tinging tinglings tings tinkle tinkled tinkles tinkling ' +
  'tinned tinning tinsel tinseling tinsels tinted tinting tints tipper tipping tipple tippled tipples tippling ' +
  'tipsy tireless tiring tissue tissues titled titling tits tittered tittering toad toady toasting toasty toddy ' +
  'toed toeing toes toffee toffees toggles toggling togs toiled toiling toke toked token tokes toking tolerable ' +
  'tolerances tolerant tolerate tolerated tolerates tolerating toleration toll tolling tolls tomb tombed tome ' +
  'tomes tomorrows toms toned tonguing toning tons tonsured tonsures tonsuring tooled tooling toot tooted toothy ' +
  'tooting toots toppings topple toppled topples toppling topsails topsides toque toques torched torches ' +
  'torching torrents tors tort torte tortured torturing totaling totalities totalling tote toted toting tots ' +
  'totter tottered tottering touchier touchingly touchings toughly touring tours tousling tout touted touting ' +
  'touts toweling towered towering towheads towing tows toys tracer tracers tracings tracker trackers tract ' +
  'traction tractors tracts trades trading trailing trails trained trainees trainer training traipsing traitors ' +
  'traits trammel trammeling tramped tramping trampled tramples trampling tramps trance trances transform ' +
  'transformed transforming transforms translucence transparency transparently transpire transpired transpires ' +
  'transpiring transporter transporters transpose transposed transposes transposing trapezoid trapezoids trapped ' +
  'trappers trapping trappings traps trashier trashy travailing traveled traveling travelling trawlers trawling ' +
  'trawls treading treadle treadled treadles treadling treasured treasures treasuring treaties treatise ' +
  'treatments treaty trebled trebles trebling treed treeing trekking trembled trembles trembling tremolos ' +
  'trenched trenches trenching trendies tresses trestles triad trialing trialling trials tribes trice tricked ' +
  'trickiness tricking trickle trickled trickles trickling tricks triflers trifling trig trikes trilled trilling ' +
  'trimmer trimmers trimmings trios tripe tripled tripling tripos trolled trolling trolls tromping trooped ' +
  'trooping troops trotted trotting troubled troubling trough trounced trounces trouncing trouping troweling ' +
  'trowels troy troys truanting truce truces trucked trucking truckle truckled truckles truckling trudging truer ' +
  'truest truffles trump trumped trumping trumps trunking trunks truss trussing trusting trusty trysting tuba ' +
  'tubas tubed tuber tuberous tubers tuck tucked tucking tucks tufts tumbled tumblers tumbles tumbling tumour ' +
  'tuna tunas tuner tuners tunnies tuns turd turds turf turfed turfing turfs turner tushes tusk tusks tutorials ' +
  'tutoring tuxes twang twanging tweeds tweet tweeter twerk twerked twerking twerks twigging twinged twinging ' +
  'twinkle twinkled twinkling twinklings twinned twinning twins twister twisting twitch twitched twitching ' +
  'twitted twittered twittering twitting tying tyke tykes types typing typos tyro udders ulterior ultimate ' +
  'umping unabated unaccepted unaffected unassailable unassuming unavoidable unbarred unbeaten unbecoming ' +
  'unbending unborn unbounded unbuttoned unbuttoning uncased unchanging uncharted unclothed unclothing ' +
  'uncomfortable uncomplaining uncompressed uncontaminated uncontrollable unconvinced uncorked uncoupling ' +
  'uncovered uncovers unction unctions undated undaunted underbid underbids underfeed underfeeds underlie ' +
  'underlies underline underlines undermine undermines underneaths undersea undersign undersigns undersized ' +
  'underused undeserving undoes undoings undoubted undulation undying unearned unending unexpected unfits ' +
  'unfitting unflagging unfolded unfolding unformed unfounded unfrocked unfrocking unfrocks ungrateful unharmed ' +
  'unhesitating unhinged unhinging unhitching uniforms unifying uninstalling uninstalls unites unity unlabeled ' +
  'unlacing unlatches unlatching unleaded unlisted unloading unloads unloosed unloosing unmaking unmanned ' +
  'unmarried unmasked unmasking unmatched unnerved unoriginal unpick unpinning unplumbed unprepared unpromising ' +
  'unravel unravelled unrelated unreleased unrepeatable unreserved unrewarding unrivaled unrolled unrolling ' +
  'unsalted unsaturated unscathed unscheduled unscrambled unsealing unsettled unsettling unsheathed unsigned ' +
  'unsnapping unsolved unstated unsteadily unstopping unsuitable unsuited unthinking untiring unto unwavering ' +
  'unwonted unwrapping unzipping upbraided upbraiding upbringing upchucking updater upending uplifting upload ' +
  'upmarket upright upsetting upstages upstanding upstarted upstarting upstarts upturned urgently urging ' +
  'urinating urns user users ushering uttered uttering utters vacating vaccines vacillated vacillates ' +
  'vacillating vagrants vale vales valeting valued valves vane vanes vanguard vanguards vanishings vanities ' +
  'vanned vanquished vanquishes vanquishing vaping variants varied variously vastly vasts vaulted vaults ' +
  'vaunting veered veering vend vended vending vends veneering vented ventilate ventilated ventilates ' +
  'ventilating ventured venturing verily verities verity versified versifies versify versifying vertices vested ' +
  'vesting vetches vets vetting vibrato vibrator vibrators vibratos videos vied vies viewer viewings vilified ' +
  'vilifies vilifying vindictive violated violates violating violation violations vireo virginal viscount ' +
  'viscounts vise vises visibly vising vitiated vitiates vitiating vitiation vivified vivifies vivifying ' +
  'vocation voiced voicing vole voles voltages voluminous volunteered vomited vomiting vomits voting vouched ' +
  'vouches vouching vowels vowing vulture wack wacks wadded wadding waddling wader waders wading wads wafers ' +
  'waffling waft wafted wafting wafts waged wager wagering wagged wagging waging waif waifs wailed waistline ' +
  'waistlines waists waiter waived waives waiving wakens wale waled wales waling walker walking walks wallboard ' +
  'walled walleyed walling walloped walloping wallow wallowing wallows wanderer wanderers wands wane waned wanes ' +
  'wangle wangled wangles wangling waning warbled warbling ward warded warder warders warding wards ware wares ' +
  'warier warmed warmers warrantied warranties warranty warrantying warred warring wart warty wary washboards ' +
  'washings wasp wasps waster wasters watchdog watched watches watering waterline waterlines wattle wattled ' +
  'wattles wattling waver wavering wavers waxed waxing waxwings waxy weakling weakly weal wealthy wean weaning ' +
  'wearying weaved weaves weaving wedges weed weeded weeder weeders weeding weeds weeing weeper weepings weeps ' +
  'weepy weer wees weighting weights weighty weir weirdo weirs welcoming welds welling wells welted weltering ' +
  'welting wench wenches wended wending wends wens wets wetting whamming wheal wheals wheedled wheedling wheeler ' +
  'wheezed wheezing whelped whelping whelps whereat wherefore wherefores whetting whiffing whiled whiles whiling ' +
  'whimpers whined whiner whiners whinny whippet whippets whippings whirled whirling whirls whirr whirs whisker ' +
  'whiskered whiskey whiskeys whiskies whisking whispers whist whistle whistled whistler whistlers whit whiten ' +
  'whiter whites whither whiting whits whittler whittlers whittles whizzing wholes whomever whoop whooping ' +
  'whopping whores wickets widen widows wigged wigging wiggler wigglers wigglier wiggly wights wilder wile wiled ' +
  'wiles wiling willed willing wills wilted wilting wimpled wimples wimpling wimps wimpy winched winching ' +
  'winding wined wines winged wingers winging wining winked winking winning winnings winnow winnows wintered ' +
  'wintering wiper wipers wired wireless wiry wiser wises wisher wishers wishes wishing wist witched witching ' +
  'withdrawal withdrawals withered withering wits witting wive wives wobbled wobblier woes woks wombat wonted ' +
  'wooded woodmen woodpile woolen worded wording wordings worker workings workshops wormed worming wormy ' +
  'worrying worsened worsting wounded wounder wounding wounds wowing wrack wrangling wrapper wrappings wraps ' +
  'wrathful wreak wreaked wreaking wreaks wreathed wreathes wreathing wrecker wresting wrestled wrestles ' +
  'wrestling wretch wretched wretches wriggle wriggled wrigglers wriggles wriggling wright wring wringers ' +
  'wringing wrings wrinkle wrinkled wrinkles wrinkling writ writer writers writhe writhes writhing writings ' +
  'writs wronging wrongs wroth wrung yakked yakking yaks yammered yammering yammers yapped yapping yawing yeahs ' +
  'yearling yearlings yearly yearn yearning yearnings yearns yeas yeasts yelled yelling yellower yellowest ' +
  'yellowing yellows yells yelp yelped yelping yeps yessed yipped yipping yodels yoking yonder yowled yowling ' +
  'zapper zebras zillion zincking zinged zingers zinging zipped zipping zips zonked ';
