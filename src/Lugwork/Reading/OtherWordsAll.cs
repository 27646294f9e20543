namespace Lugwork.Reading;

/// <content>The words, in the order of the alphabet.</content>
internal static partial class OtherWords
{
    private static ReadOnlySpan<byte> All =>
        """
        aangelapt aangepast aangepaste aangetast aangetaste aanwrijving abdeckklappe abertura abgefeimt abgefragt abgegrast abgeheilt abgejagt abgenagt abgesaugt
        abgeseilt abgeteilt abiertos abietta abietto abkleben ablenkbare ablenkung ablente ablette abloten abmesse abnegato abortos abrazadora abrazadoras abridle
        abriere abrieres abriete abrile abriole abrirle abseits absence absences absende absendung absenkbar absenke absenkt absenkte absentee absentees absentie
        absenties abstente abusent accatta accenta accented accents acceptas accepteer accerta accette acciaino acciano acciaro accionad accionadlo accionalo accionando
        acconciato accorcialo accorciamo accorciano accorciavo accosciato aceitada acemite acepa acepada aceptaba aceptadla aceptala aceptara acepte acerbos acerons
        acers acertada acervos aceta acetite acheter acheteras achseln achtenden achterbankje achtereen achtergaan achterhand achterkaft achterlaan achterland achterman
        achternicht achterpaden achterpanden achterplat achterrand achters achterst achterwaart achterwand achteten achura achzenden acierta aciertas acierto acter
        acteras acteren actionnee actionnerent actuacion acune adamite adaptadle adaptado adaptadoras adaptale adaptarle adaptecs adapteer adaptees adapteis adapteras
        adaptes adaptons adattatoci adattatole adattatoli adattatomi adattatone adattatosi adattatoti adattatovi addentro aderivo adestro adhesivo adite admette admimes
        admires admisses admites admitia admitias admitidla admitidlas admitidlo admitidos admitila admitilas admitilo admitio admitira admitiras adoptable adoptador
        adoptadores adopter adopters adulante advance advancement advises afdeling afdoppen afdwaling affinee afgejaagd afgeladen afgereden afgesleten afgeslopen
        afgevaagd afgevild afhaling afine afpaling afschrift afstaand afstond agent agente agnelli agnello agolo agrandela agriete aguero agueros aguiero agujeras
        agujereo agujeres ahndung ailette ailla ajustadle ajustale ajustarle ajustee alambree alance alargare alcanne aleen alegacion alegato alelen alesaggi alesale
        alesalo alesane alesano alesare alesate alesavo alforza alforzas algente aliento allagare allargale allargane allargar allargarle allargarne allargate allarmare
        allene allerhochsten allerhochstes alliace alloyed allumini alluminico alluminino allumino almenno aloten alpette alteare altee alterative alteree alternatie
        alternatieve alternatile alternatine alternativ alterne alterte alteza altiere altra altre aluette alumbre amarare amare amarree amazon ameno americani
        americanos americans americen amerikaan ameritan amerizan amiento ammassa ammasso ammortizzatole ammortizzatone ammorto amoer amorato amorfos amorios
        amortiguado amortis amovibile anboten ancas anchais anchara anchoes anchois anchors ancilla anclais anclale anclales anclame anclare anclares anclase anclases
        anclate anderte andre andree anelali anelalo anelante aneli anelo angebrochen angefeilt angelote angeltet angesagt angeschliffen angeschweist angeschweiste
        angiolo anglaisas anglaisee anglaisees anglas angolais anguilo angulais anhangig anila anilais anillas anilles anilo anklebten anmesse annegalo annegano
        annegavo annehmbar annehmbare annuale annue annuel annulee anone anoten anspect anstalt anstaut antal anther anticua anticuas anticuo antienne antiennes antiga
        antigas antigo antiguos antilla antillo antiqua antiquas antiquo antreibe anulais anule anulo anussen aparate apare apartje apearte apelante apero aportate
        appairent apparient appatent apportate apportati approdata approdate approvala approvale approvane approvante approvare approvaste approvava approviate aprete
        apreto apretura apriate aprirete aprirle aprirne apriste aprite aproada aproadas aprobaba aprobabas aprobadla aprobadlas aprobados aprobala aprobalas aprobara
        aprobaras aproximad aproximadlo aproximalo aproximando arambre aranados aranalos aranamos arananos aranaos aranaros arandola aranela aranuela arcazon arciere
        arcionado ardente ardiere ardieres arent arets argante argentee argenteo argerte arguent arguente ariete arlette armaron armento armida armiere armies armines
        armslengte arnillo arpente arpento arrasare arrente arres arrest arrests arretas arretes arriaba arriare arriares arridere arriele arrieles arrieme arrieras
        arrieree arrierees arrieros arriese arrobada arrobadas arrostre artiche articule artiere artiger artiges artille arzente asenti asento asiendo asiente asienti
        asimetrias asimmetria asnilla asnillo aspetto asportaci asportai asportale asportali asportami asportane asportante asportanti asportare asportarti asportasi
        asportaste asportasti asportavi asportiate assenai assene assenee assense assensi assentai assentii assento assents assenze assenzi asser asserti assesti asseti
        assette assetti assies assisse assiste assunte assunti atornillad atornilladlo atornillalo atornillando attaccai attachee attacke attecchi attiche attigua
        attiguo attracchi attracco atura aucunes aufbahren aufeinander auffallend auffallende auffallenden auffuhrung aufgebahrt aufgelebt aufgeschlossen aufgetrieben
        aufgewertet aufklebern aufklebten aufleben aufnahe aufnahte aufnehme aufschraube aufschraubten aufschriet aufstand aumente aumentes auparte ausbohren ausdruck
        ausen ausenseite ausentas ausenteis auser auserhalb auserte ausfalle ausfullend ausfullende ausfullenden ausgelotet ausgelotete ausgetrieben ausgeweitet
        ausnahme authorise authorises automobiel automobiele automobil autoreise autorice autorices autorisas autorite autorites autorizaba autorizabas autorizadla
        autorizadlas autorizadlo autorizados autorizala autorizalas autorizalo autorizando autorizara autorizaras autorizate autorizzala autorizzale autorizzane
        autorizzante autorizzare autorizzaste autorizzava autorizziate avancee avancerent avanece avantal aviento avviato avvinato avvisato avvistato avvitalo avvitano
        avvitavo avvittato avvitto avvivato azionalo azionano azionavo azzonamento baadjes baanden bacagli baccio backyard bacterie badagli badjes badruimte baeria
        bagajes bagares bagases baggage bagnagli baguage baguees bagueis baillant bailles baisses bakes baking bakterie balden baleria bales balhoofden ballees ballens
        ballets ballone balls balocca balocco banche banches bandean bandeen bandees bandern bandes bandies banen banend bankjes bannend baragli baras barcos bared
        baring baringen barking barrais barreanos barreaos barreas barrednos barreenos barrelos barremos barrenaos barrenas barrenes barrens barreos barrernos barreros
        barrias barser basagli basare basases basata basate basato basee basees baser baset bashing baskiet bassets batearia batera baterai batiria batter battera
        batterai battere batterei batterica batterla batterle batterne battuda batuta baues bauges bavagli bavaglio bazos beademd beading beaient beaker beaks beaming
        beaning bearded bearding beasses beateria beating beatings beccola beden bedien bedienst bedienung bedoening bedrage bedrand befestigen befeuchtung befre
        begannt begrenst behagen behalte beharing behave behring beidden beien beilage beilagen beilegend beiliegen bejagen bekennt bekkend beklage beklagen belagern
        belagre belange belangen belas belazen belegen belgae belge belgen beliegend belijder bellone belogen belugen bemannt benannt benijder benotigst bequillee
        beraad beredte bereite bereitung berijmer bering beringen berlage beroken besagen besannt beslagen bestatigt betasting betatigst beukend beuring bevestigden
        bevrijder bewaring beween bezagen bianche biancho biden bieden biedere biegst bieldas bielgas biels biest biggelt bijgeleerd bilas billant binai binair binarci
        binarli binarlo binarmi binarsi binarti binarvi bindbreedte binen biner binnenbad binnenbrand binnengaat binnenhand binnenlaat binnenland binnenoor binnenrand
        binnenwand binnenwerk biselas biten bites bitse blagen blagues blanche blanches blaring blasees blasses blaster blasting blattre blazing bleaker bleien bleinen
        blekend blekken blieben blieven blijden blijken blikjes blikken blinder bloca bloccaggi blockage blockages blocken blockes blocs blogjes bloken bloks blokten
        blonken bloqueaos bloqueas bloquees bloques blosjes bloter blotter blouwen blozen blushed blushes blushing blussen blutees bocage bocages bocca boccale boccone
        bocks boden bodes bodices bodines boeiden boekend boelage boering boertje boitees boiter bokjes bokken bolon bolschijf bolster bonario bondies bonhomie bontjes
        boontje boordje bootje bootjes boqueo borer borken boses bossees bossers bossues botas boten boteria botes botjes bottale botte bottel bottele bottier bottons
        bouclons boudons bouelons bougons boukjes boulins boulions boulots boumons boutais boutes bouteur boutons boutre bovenhuis bovenkast bovenkop bovenlands bowlden
        boxring bozen bracca bracchi braccino bracco bracees brache brachen bracht braci bracia bracio brackets bradage bradees braillant braisee braisees braiser
        brakels braker brakers bramare bramata bramate bramato bramees branchas branchee branchees branchie branchies branchue branchues branden brandjes brandruimte
        brasala brasalo brasano brasante brasarle brasarne brasaste brasava brasavo brasear braseare braseas braseeis brasems brases brasher brasiate brasier brasito
        brassee brassees brasser braste brasure brauche brauchen brauches brauchst bravare bravata bravate bravato bravees brayees brazen breaded breaking breas breasen
        breccia bredaer bredene breede breeder breiden breie breier breijer breimer breister breitest brekend breker breking brellant breme bremen bremes bremsbelag
        bremsern bremsklotz bremste bremsten bremzen bressen bretanica brete bretter breuker brevite bridais bridals bridgee bright brigola brijder briljant briljante
        brillait brillance brillane brillantee brillanze brillaste brillat brillate brillent brilliant brindas bring bringen brise brisees britanico britannic
        britannica britische britste broccia broccio brocken broeder broeken broen brokern brokjes bronche bronches brosses broutas brouter brouwen bruce brucht bruiter
        brulons brunche brunchen brunches brushes brushing brussen brutish buccola buccole buche buchen buches buchon buchten bucke buees bugola buitenbad buitenbaden
        buitenbanen buitenbrand buitenhand buitenkast buitenkom buitenlaat buitenland buitenlanden buitenlands buitenrand buitenranden buitenwand buitenwanden
        buitenwerk buizennet bullonai bulon burlone burloni busches busen buses bushed bushels bushs busing bussala bussing busting busying butas buter butes buttees
        buttery cabales cabalina caballo cabbing cabed cabeles cabes cabia cabian cabio cablaggi cablalo cablano cablavo cablead cableando cableas cablees cabrato
        cabreado cabrera cabron cadano cadenca cadencas cadens cadenza cadenzas caderas cades cadetes cadetto cadran cadrees cadrera cadro caera caete caico caine
        caines cains caissette caissettes cajetes calasse calato calcasse caldado caldano calenas cales caletes caletta calette caletto caliber calibers calier caliers
        caliner callare calleado calling callipers calmara calmera calotea calotee calottee camba cambai camban cambara cambera cambiabile cambiadle cambiadles cambiado
        cambiale cambiales cambiaos cambiarle cambiarles cambias cambiatili cambien cambies cambija cambin cambino cambions cambiza cambizan cambizo cambo cambre
        cambrian camio campanillo campara camped campera camping camps canado canaula cancale cancele candalo candamo candando candele candido caneado cangado caniche
        canis cannee cannela cannete canneto cannole cannolo cannule canot cansado cansale cantado cantais cantale cantando canteis canto cants canula capaceta capacete
        capacitad capetto capotta capotte capotto caprera caprier caque carano carbine carbonaio carbonee carbonico carbonilo carbonino carbonizo carcano carcans
        carcava carcaza carcera cardabas cardadas cardalas cardalo cardando cardanos cardans cardaras cardasse cardato cardavo cardena cardeno cardera cardes cardinas
        cardino cardonas caree carenas carence carera cariaco cariano cariasse caricasse caridad carier cariera cario carlier carlotta carlotte carmasse carnale carnele
        carnera carnico carnier caromed caron carotta carotte carpello carrara carrasse carrear carrees carrela carrels carrena carrer carreta carretea carretear
        carreteara carretela carreteria carriera carries carrillo carrone carrono carsico cartano cartasse cartello cartera cartier cartone cartono carvallo carvico
        carzano casates cascasse casee casees caseles casetas casetos casetta cashing casotto casquillas cassis caste caster castes castidad casting catalana cataliza
        catalogne cataloguee cataloog cataluna catarina catea catean catee cateen categorica categorice categorisa categorise categoriza categorize catenla catenme
        catense cathalina catilina catis caudado causette causettes causing cavadlo cavalco cavalo cavarlo caveto cavidad cavillo cayenas cayetes cazoleja cazolejas
        cazolera cazoleras cazoletea cazoleteas ceanoto ceasing cebrado cechi cefrado celasse cellars cellier celliers cenares cendres cenimos centers centiemes centino
        centjes cento centraal centradle centrage centrame centrane centrare centrarle centras centrase centrate centree centrees centreis centrer centris centros
        cenures cerbone cercado cercale cercasse cerce cercheo cerchiane cerchino cercho cerci cerclee cerno cerradlo cerralo cerrando cerrano cerre cerrera ceruse
        cessino cestano cetino cetre cetro chables chainee chainees chaining chaires chairing chais chaises chamara chamare chambare chamber chambree champed champing
        chanced changad changar changeant changeat changee changerent changeur changle changoer changue chankas chanque chanted chantent chanter chapeta chapetas
        chapines charbon chargeable chargeables charged chargee chargement chargent charger charlot charque charres charretera charrier chase chases chasing chasis
        chasque chassais chassas chassee chasses chassie chassies chaster chausse chavea cheminerent cherres chiane chiarella chiarelle chiasse chice chicotee chicste
        chilometrai chilote chine chines chins chipote chirote chive chocottes choie chome chomee chorice chorrea chouleur cicchetti cicle cicliste ciere cierges
        ciernes cierras cimando cinas cingia ciniche cinicos cintais cintando cintare cintares cinte cintes cintree cintrees cinture ciraulo circe circolar circolo
        circulair circule circuler circuyo cireuse cirre citas civette civettes civetto clamara clamera clammed clamming clampas clampes clams clanged clapped clapping
        claps clarece clases clasica clasico clasped clasping classee classis clastica clastico clastique clavelees claveta clavetas clavetates clavete claveteas
        claveteeis clavettas clavettee clayette clayettes cleaned cleanser clearer cleaved cleaver clicher clinches cliper cliquees cliques cliquetas cliquetes
        cliquetis clister clomped clomping clonico clonische clore clovers clumped clumping coartada coartadas coartado coartados coartar coasser cobertura cocando
        cochet cocotates cocotees cocotes cocottas cocottees codificado codificados codificata codificato coedition coers coevert coglier coinca coinco coitada coitadas
        coitado coitados coitando colales colando colar colare colaris colasse coleare coles colgare coliche colicos colique coliques collage collais collane collaps
        collares collaris collaroni collas collate collees collere collets collider colliger collyre colmando colmare colmars colorai colorais coloree coloreis colorias
        colorie colories colorii colpetto colvert colverts comandado comandai comandalo comandano comandavo comande comandito comanlo combando combatible combinad
        comical comiche comicos comique comiques commandee commandeer commandeers commander commanders commando commende commuable commutale commutarle commutatile
        commuter compartible compartibles compasible compatirle compelete competa competant compete competer competo compieta compiete complant compleja complejo
        complessava complessavo complessino complessita completee complexa complexe complexo complot complota complote comploto complut compotant compoter comprais
        compras comprase comprases compreda compreis comprensa comprenso comprera comprero compres comprese compressa compresser compressiva compressivo comprime
        comprimes comprisses comprites comproba comprovar comptait comptat comptent compter computabile computable computant computar conca concert concerted concerter
        concerti concerts conche concia concio conco condado condicio condicione condite conditien conditile conditine conditio conducto conduzione coneando confermale
        confermane confermarle confermarne confermate conficion confirma confirmad confirmare confirmeer confische conformar conformare conformed conformer conia
        coniando conicas conics conio conjungo conmutadle conmutale conmutarle connoto conque conques consentia consentiate consentida consentido consentie consentila
        consentile consentilo consentime consentine consentira consentire consentiro consentirte consentiste consentiva consentivo conserjes conservas conserve
        conservees conserveis constando constricteur consunto conta contada contadas contados contano contar contara contardo contare conte contendo conter contera
        contero contrae contree controdati controdato controfiletto controlado controlaren controlas controles controns contundo conucos convectie convent conventi
        conventie convents converged converger convergi convergida convergido conversed converser conversi conversie conversino converteer convertibel convertidla
        convertidle convertidles convertidlo convertii convertiles convertime convertine convertir convertire convertirle convertirles convertis convertite convertitile
        convertitili convertor conyunto coona cooptant coors copando copee coperchi copertine copertoci copertole copertoli copertomi copertosi copertoti copertovi
        copia coppa coppertone copters copule corada coradas corado corados corando corar corbona corcada corcadas corcado corcados corchete corcona cordada cordadas
        cordado cordone corea coreada coreadas coreado coreados coretto corlada corladas corlado corlados corlare corna cornada cornadas cornado corne cornetto corniche
        cornificata cornificato coronae coronda coronie coronta corra correcte correda correia correla corretto correva corroie corse corsetto cortaba cortabas cortadla
        cortadlas cortadlo cortadlos cortadnos cortala cortalas cortalo cortalos cortamos cortanos cortao cortaos cortara cortaras cortaros corte cortona corvada
        corvado cosed cosificado cosificados cospetto cosquillo costada costadas costado costados costando coster costino costrittore cotar coter cotiche cotiers cottes
        coulasse coule couler coulissante coulissants coulissates coulissee countersank countersink coupeje coupeur couplet coupleur coupole coures coureur couronnee
        coursee courting couse couseur cousisse coute couvert couverts covando covert coves cramera cramped cramping crampon cranas crantas crece cremada cremado
        cremados cremata cremati cremato creusee crieuse criquets croada croado croados croata croati croato crochat crochee crochees crochent croches crochetas
        crochetes crochit crollar crollare cromaci cromadas cromai cromali cromami cromamos cromanti cromarti cromasi cromasti cromavi crome cromita cromiti crone
        cronica croniche cronico cronicos crotchets crotter crows cuado cuadradlo cuadralo cuadrando cuadraos cuadras cualidad cuantidad cuatros cubiertos cuerpeo
        culasse cullare culotta culotte cunette curette curettes curno currado currier curse curte custer custodira custodita custodiva cuter cutters cyclise cyclisee
        cyclisme cyclist cynical cynique cyniques cynische daadloos daadloze daden dager damer datanti datazione deale deals deans debande debatat debatit decadde
        decades decaed decaes decalees decalves decante decantera decanteras decantero decapage decapee decapes decavee decaves decelee deceles decenso decente decilage
        deciles deckle deckles decorte decrees decrive dedains dedalee dedales defasse defende defending defends deferencia degagerent degante degantera deganteras
        degreee degreees degreve degreves dehalee dehales deiscente dejales dejante dejantera dejanteras deken dekstro delaite delaitera delaiteras delasse delasser
        delate delatte delattera delatteras delegada delegadas delen delende delgados deliant demandee demange demente demone demonie demontabel demontabele demontee
        demontrable demontre demote dempende denante denatta denatura denature denier denotado denotata denotee denrees dentaba dentada dentadura dentando dentara
        dentare dentato dente dentele dentes dentici dento dentudo departe depassee depayse depayser depecha depechas dependas dependes dependis dependre dependue
        dependus depens depense deplante deplantera deplanteras deporle deporne deporre deportele deportene deportese deposte depot depote depotee deppende deprends
        deprive depte derager deragliatole deragliatone derailler deraillerent derivee deriven deriver derniere derocha derochas desaconsejaba desaconsejando
        desaconsejara desaguales desales desande descanso descante descarrilado descende descentraba descentrando descentrara descentre desconocio desconte descuente
        desecha desechas desecho desechos desende designales desigualas desiguale desigualeis deslazada deslazado deslazamiento desmande desmontadle desmontale
        desmontarle desmonte despaje despece despee despene desplaced desplatada desplatado desplayada desplayado desplazaba desplazadla desplazadlo desplazala
        desplazalo desplazando desplazara despoje desse desta destanti destar destara destare destaro destata deste desteje destenso destera destero desti destini desto
        destrui desus desvente desviado detalee detales detende detends detiras detraes dettata dettatura deudoso deukten devalee devales deviant diaconal diagonaal
        diametres dicente dicentes diceste dickeste dickester diekte diene dienstes dientas dieptes diestra dietes dieto difetto differencia differencie differente
        differenze differenzia differez dikkere dileccion dilecciones dilecta dilection dilecto diletto dilling dimensionai dimensionas dimensiones dimensionne dimetto
        dimschakelaar dimschakelaars dipende dipte dique diques directamente directie direktion diresse diretta direttamante diritta dirittamente dirkte dirottamente
        dirven discanti discente diseccion disecciones diseguale diseguali disension diseque diseques disossata disossato disparas disparos disparue disparumes
        disparutes displace displayed disponibel disponile disqueis dissous distancai distancee distanciale distanciate distancie distane distante distanze distanzi
        distanziagli distanziante distanzianti distanziarle distanziarli distanziarti distanziaste distanziasti distarti distasti distati diste distesa distinti ditero
        ditta ditto diver divetto dizques dnieper doblares dolames dolates dolores domande domares dompelt donares donazione doodgaande doodlopende dooreen doorgaand
        doorgaat doorlopend doorroer doorslaat doortrapter dopares dopasse doppele doppelst dopper doppers doppino doradlo dorando dorares dornier dotares doublee
        douelle draadmand draadmanden draagband draagbanden draaggreep draagkabel draakje draguer dranger drapait drayait drenasen dressee drieling drier driesse
        driever drijven drijver drillend drontes droper droppees droppels droppelt dropperas droppes drubbel druiven druppers dryaden dubbelde dubel ducales duellen
        duite duites dulares dumpfer dupasse durates durchgangige durchgebend durchgebende durchgebender durchgehen durchgestreckt durchhang durchsehend durchsehende
        durchsehender durchstechen durcites duretes duriate duritas duritos durits durstes ecartas ecartees ecartelent ecarterent ecarts eccettuo ecepto echangee ecima
        eclusa ecore ecrouas ecroues ecrouis ecroulement ecrus effectieve effektive effettive effettuo egaiement egalerent egarement egayement egels eigende eigens
        eigne eigner einbaubar einbaulage einbaust einbautet einbruchen eindrucken einfuhlung eingedenk eingelassen eingepreist einging einheizt einjage einklage
        einlade einlagre einlege einmache einrucken einschiebe einschiesen einstecke einsteckten einteile einzeilig einzeilige einzeiliger einzeiliges einzeldrucke
        einzelne eisgang eiter ekele electo elector electrisa electriza electrizo electromotor electronisa elevation eleve elevee elevees eleves eliminaba eliminabas
        eliminadla eliminadlas eliminadlo eliminadlos eliminadnos eliminala eliminalas eliminalo eliminalos eliminamos eliminando eliminano eliminanos eliminaos
        eliminara eliminaras eliminaros eliminata eliminato eliminava eliminavo emanche embebia embouas embouat emboues emboutis embustida embustido embut embutada
        embutado embutia embutidla embutidlo embutila embutilo embutio embutira emmancherent emonder empalement empanadura empanaduras empatement empatterent empilerent
        empinadura empinaduras empotraba empotrando empotrara empunadora empunidura enanche encabado encaches encadado encagement encajadlo encajalo encajando encalar
        encamado encanado encapado encarado encartes encasado encasare encastada encastare encaste encastraba encastrad encastrar encastrara encavado encelado encelar
        encia encisma enclore encobado encobar encobre encochas encochees encoclado encoclar encocles encofre encojar encoladlo encolalo encolando enconado enconar
        enconches encorado encorar encorches encorde encorne encorve encostrada encostre encoure encovado encovar encre endevee endevees endeves enfajado enfiladle
        enfilale enfilarle enflant enfoncerent enfonceur enforcement enforcer engagerent enges englishes engolado engolar engoncee engoncer engranaje engranares
        engranases engranujes enjoncee enjoncer enjutado enlanche enlevas enlutado enoncee enoncer enroches enrolado enrolar enrolement enrouement enroulerent enrugado
        enrulado enrunado ensamble ensanche entada entandar entee entender enterada enterare enteras entere enteres enteros entes entfalten entfernst enthalte enthauten
        entier entiere entiers entkernt entoile entoiles entolado entolar entradla entraida entrainer entrami entrampe entrarle entrarme entrarne entrarse entrarte
        entraube entremites entremos entrene entres entrese entretoisas entretoisee entretoisees entreve enturada enturare envelope envelopje enveloppee enviaron envion
        enviran enviren epaissie epandeur epiasse episse eprisse equipage equipale equipame equipare equipase equipate equivalant equivalen erettrici ergotas ergotes
        erhange erlaubst erlischst erloscht ernster eroder erutado erwischt esatonale escaliado escalonaba escalonad escalonara escarbado escardado escareado escariad
        escariando escarizado escarpado escarzado escluda escludo esclusivo escolado escolar escoriado escusa escuso escussione esiga eslabonas eslabone eslaboneis
        espacee espacerent espaciad espacial espaciales espaciando espacico espacie espander espansibile esparce esparcio especifica especificais especificaos
        especificos espesar espesares espia esserne estabon estanar estancar estaria estarias estarna estella estender ester estera esteran estere esteren estereo
        esteri esterina esterino esteriormente esterlina esterlins esternai esternamene estero estimate estio estira estirada estirado estiras estrado estrai estrattole
        estrattone estrechais estrechia estrela estrelia estremista estrena estrene estreno estriaba estriais estriando estriara estriba estribada estribado estribas
        estries estriga estrina estrinas etalement eternal eternally eternamente eternas eterni eternos eters ether etier etiers etile etilo etiole etioles etire etirer
        etoilas etoilee etoilees etole etoles etriper etroites eugenes eustilo eventueel eventuel excede exceded exceptuo excerpt exchange exclude excludes excluia
        excluidla excluidlo excluila excluilo excluira exclumes exclure exclusa excluso exclutes excluye excluyes exonder exoremos expanderen expandes expandir expanse
        expansee expansione expansive expendable expending exponed extendeur extendible extenuer exteriors externals externamente externats extorna extornas extorne
        extornes extorno extractar extracto extrada extraemos extremas extremes extremis extremistes extremite extremities extremstes fabbrica fabbricante fabricaat
        fabrican fabricarte fabricaste fabricate fabrida fabrikat faccetta faccette facetta facette fache fachem facher factoor factuur faenado fahrens fahrern falan
        falange falanges falangia falen fallten faltad faltar faltare faltares faltest falzbar falzbare falzbarer falzbares falzten fames fanges farbern farbten farther
        fastest fattier fattiest fattole fattone fattorie fatture faulten fauteur fautore faxtest feeders fegen fehlern fehlten feilend feins felgengrose fencers fendes
        fendeur fendre fermato ferramienta fettest fiacchi fiado fiancai fiancais fiances fiaschi fiasque fiasques ficaire fieser fiestas fietsband fietsgroepen
        fietsland fietsmaand figment fijadlo fijando filare filarie filates filee filees files filetai fileteas filetees fileteo fileter filetera filetjes filettaci
        filettala filettali filettalo filettami filettano filettanti filettar filettarti filettasi filettasti filettatore filettava filettavi filettavo filiare fillets
        filment filmetti filmetto filotto filtrad finders finnish fiorata fiorato firmato fissaggi fitst fittest flaco flacos flaire flancher flandes flane flanees
        flanes flanque flanques flans flanschte flanschten flansen flaque flaques flaschen flasher flatcar flater flatter flattest flecher flennen flensen flete fletear
        fletee fletes flets fletser fletti fletto flexibel flexibele flinken flitted flitting flotate flote flotet flotete flottee flucher fluxible foche fodders
        foderai fodro folderes folgers folkers fonctionnee fondable fondero fondons fonos forames forbita forbiti forbito forcata fording forelle forellini forellino
        formado formage formalo formano formata formateo formatto formatura formavo formella formelle formiato formine forming fornellini fornellino forni fornia
        fornica fornici fornico fornida fornido fornii fornio fornira forniro fornirti fornis fornisti forniva fornivi fornivo forsche forsige forto forzata forzatura
        fotte fourbie fourbies fourbis fourchas fourchee fourchees fourchue fourchues fourchus fourmis fourneau fournee fournees fourniers fournimes fournites fracken
        frakken framers franante frananti franata francasse francene francesca franceses franches franchi franchis franchise franchises francisa francisas francises
        francken francks francois francoise francoises francs frane frangen frangesi frangia frangle franjais franjen franjes frankes frankin franose fransen fransje
        franzen frase frasque frasques frech fregado fregante freganti fregate freigebe freihabe freinas freines freis freitage frelate frenaba frenada frenadlo frenala
        frenalo frenando frenane frenano frenaos frenara frenarte frenarti frenaste frenasti frenati frenato frenava frenavo frenken frensch freons freos fresaba
        fresada fresado fresala fresale fresane fresanti fresara fresare fresase fresaste fresava fresiate fresnos fretado fretins frezado frianse friens frisata
        frisate frodero frohere froncais fronces frunces frustra fruta fruyere fugible fuhlend fuhrerin fuhrers fulco funadas funas fundais fundaos fundias funds furche
        fusibile fusile fusille fusta gaaitje gaaitjes gaaltje gaaltjes gaasjes gabellane gabellante gaben gache gaches gacho gachos gaden gagen gaies gaina gainees
        gains galuche galuches gameten gamines gammes gamos ganchas ganen ganes gangeln gangern ganging garante garantice garantida garantira garantire garantita
        garantite garantiva garantiza garanza garanzie garanzina garden gastaos gastjes gastons gatos gatte gatter gauchas gaucheas gauchee gauchees gauchers gauchie
        gauchies gauchis gavel gearde geaste gebaden gebaste gebauscht gebeten gebinde geboard gebood geboogd geboomd gebotet gebraden gedicht geduimd geeicht geeilte
        geeilter gefahrt gefehlt gefeilte gefeilter gefeit gefielt gefloten geflotet gefuhlt gefurzt gegapte gegessen gegeten gehaperd geheilte geheilter geheten
        gehoerd gehoord geijld geinde gejaste gekapte geklept gekoerd gekreukt gekruimd gekurkt gekurt gelaakt gelabte geladen gelane gelange gelasse gelastte gelat
        gelate gelauscht gelauste geleaste gelebt geleider gelende gelensd gelicht gelijnd gelijnde gelltet gelobtet geloerd geloste gelotst gelotste geltet geluimd
        geluste gemeden gemeen gemepten geminde gemoerd gemoeten gemoord genaden genades generacion geoord georges gepak gepakte gepaste gepatineerd gepen gepend
        geperkt gepest gepeste gepetst gepinde geplagte geplande geplante geplekte geplensd geplukte gepoerd geprakte geprasst gepreste gepruimd gepuimd geradts geraeds
        geraken geramde gerames geranden geraten gerates geratineerd gerdes gereden gereder geredes gereift gereten gericht gerieten gerieven gerijmd geroerd gerotet
        gerotete geruhrt geruid geruifd geruik geruild gesaldeerd gesaldeerde gesat gesaumt geschalte geschickt geschiet geschift geschlissen geschlissener geschlossene
        geschmatzt geschnitzten geschokt geschossen geschossener geschrikt geschritten geschroeid geschroeide geschutzt geschwatzt geschweist geschweiste gesel gesell
        gesessen gesicht gesinde geslapen geslijmd gesloken gesmeten gesnoten gesoleerd gesolveerd gesondeerd gesondeerde gespoten gestapt gestapte gestoten gestuel
        getagte getakte getampt getande getappt getappte getapst getarte getaserd getaterd getaucht getaute getipte getjapt getoerd getotet getotete getrapt getrapte
        getrieben getuscht getypte gevader geveerd gevierd gevild gevinde gevlakte gevlast gevlaste gevlekt gevlijmd gevloerd gevlokt gevloten gevoed gevoegd gevoeld
        gewacht gewaden gewende geweten gewichst gewijde gewijld gewilde gewinne gewischt gewonde gewricht gewurzt gezeten gezicht gezinde gezwicht gezwinde giffen
        gines girados giramos giratario giratori gironi gisse glade glande glandes glastos glaties glatites glatteis glattens glauche glich glider gliedre glijder
        glissee glitter glossen glosses glueing godas goles golpeas golpees golpeos gomes gommane gommees gommine gommoni gommose goossen gores gorgeas gorgees gorgels
        gorter gossa gosse gossen gosser gosses graatje graatjes grader gradiro gradito gradivo graduen graduino graemes graffai graffii grafi graines grais grames
        grami gramms granades granadi grandee grandees grandie grandies grandino grane granees granes granges grani granino grassen grasses gratais grateis grater
        gratino gratins grats gratter grattes graveel gravino grazino greeven greffes greifst greuter greven gridino grieft griepen grieven grife grifen grifes griffas
        griffee griffees griffelde griffelden griffeln griffels griffie griffies griffin griffon griffs griffue griffues griffus grift griften griglio grignas grissen
        groados groamos groasen groases groaste grobere grobste grobsten grobster grobstes groeien groenen groessen groeten groffen grofste grommelt grond grondes
        grootse grootte grooven grosa grose grosen groser groso grosos grosserie grosseur grossiere grossir grossis grossites groste grostmogliches grouses grove
        grovere grund grundes guabina guache guaches guadino guado guainia guairne guane guanina guanine guardas guardes guested guiadlo guiana guiando guidees guidions
        guido guidos guies guildes guina guinado guindes guindons guine guion guipado guipons guisado guitado haaften haarloos haarloze haften hager hagers haler hales
        haleter halfeen halfen halfter halftern halftien hallten halster halten haltering handden handelbar handeln handels handvaten hanen hangars hangels hangens
        hanges haniger hankers hanteren hater hates haubanas haubanes hauften hauptes hautens haves headier heben heeften heften heilen heisest heist heists helen
        helfen helgado hellten heloten hendeis hendes hendida hengels henkels hensels herausnehmbar herbajes herradora herrares herrases herro herstelle herstellens
        hexagoon hidraulicas hielden hielpen hielten hiero hilen hindere hinderen hineinstecke hineinsteckten hinen hinere hineren hineres hinkten hinterher hinterns
        hinteros hinters hintzen hisst hochsten hochstes hochstmas hochstmases hochstzulassige hochte holandes holandeta holeado holgando holgara hollado hollandais
        hollandische hollandose hollanos homologaba homologabas homologadla homologadlas homologadlo homologados homologala homologalas homologalo homologando
        homologara homologaras homologe homologie hooge hoogsten hoogt hoogzit hoost horern hornean horneen horquillais horquilles horsing hosing houasse houding houer
        hourder house houses houssee houting houwing huates hundia hundidla hundila hundira hungers hutes hybrida hybridee hydraulica hydrauliek ignoree ilegales
        impasible impassibile impassible impegna imponible imposable impugnatore incagli incassala incassalo incassano incassava incassavo incasto incerasse incerti
        incerto incesso incesto inclose includi inclui incluidla incluidlas incluidlo incluidlos incluidnos incluila incluilas incluilo incluilos incluimos incluinos
        incluios incluira incluiras incluiros inclumes inclura incluras inclusif inclusive inclusos inclusse inclutes incluya incluyas incluyes incluyo incola incolato
        incollale incollalo incollane incollano incollar incollarle incollarne incollate incollavo incolpa incolpare incolpato incolta incusa incusas incuse incuso
        incusso independent indiestro indipendenze inegalees inerire inerirlo inerito inert inerti infantiel infatti inferasse inferee inferer inferibile inferiormente
        inferiors inferir inferirlo inferiro inferito inferitore inferitori inferna infernal infernas inferne inferni inferno infernos inferti inferto infervori infesto
        infilza infla influida influidas influido influidos influye ingaggino ingegrepen ingekopt ingeladen ingelse ingeperkt ingeperkte ingerasse ingeree ingerer
        ingerimento ingerire ingerirlo ingerito inges ingeschoten ingesso ingestonken ingestoten ingestoven ingleses inglete ingolla ingollare ingollato ingranaggi
        ingrasso ingresa ingresas ingrese ingreso ingresos ingrosso inhesto injerire injertada injertar injerto inkasso inmerito innee innees innerer innerve innerves
        innesco inscribile inscripcion inscrire inscrito insecto insects insekts inserai inserasse inserat inserats inserees inseri inserido inseriere inserii inserir
        inserirle inserirne inserirse inserite inseriti inserivo insertaba insertadla insertala insertara insertas inserte insertos inservibile inset insets insetted
        insetti insetto insidie insieres insorti insorto instad instaken instreek instreken insurer insures intacte intakte intarli integer integers integra integraal
        integraba integrable integraci integradas integradla integradle integradlo integradlos integradnos integrafi integrai integrait integrala integrali integralos
        integrame integrami integramos integrando integrane integranos integranti integraos integrara integrare integrarle integraros integrarti integras integrase
        integrasi integrasse integrasti integrata integrava integravi integrere integreres integriere integriert integros inteken interamente interazionale
        intercambiadle intercambiadles intercambiale intercambiales intercambiarle intercambiarles intercas intercedia intercedio interco interdi interdice interdices
        interdict interdicts interdije interdimes interdire interdis interdise interdises interesse interi interina interinamente interinas interine interines interini
        interino interinos interiori interiors intermediair intermediare intermediarie intermite intermites internai internais internals internamene internasse
        internationaal internats internee internees interneis internets internons intero interpor interrale interrasse interrati interrato interri interro
        interscambiabile interscambiabili interval interzasse interzi interzo intesto intorni intorno intrea introduci introduction intugli invadida invalila invee
        inverasse inverdite inverna invernal invernas inverne invernes inverni inverno inverted inverti inverto inverts investo irida irido irregulars irreguliere iside
        istradamento italianos itera iterasse izquierdea izquierdeas izquierdeo jamas jambais janes janets jantjes jugos kaarsen kaarsrecht kabbeln kabelen kabelgast
        kabelgasten kabelgoten kabellas kabelte kabelverbinding kaboels kalle kallen kanal kanaten kanen kannten kansje kantien kantten kanuten kapelweg kareltje
        karnten karssen kasse kassen kaveltje keiem keilden keilern keilten keines kelen kemme kenen kesting keten ketsten kettingkast keuren keurzen kicks kielen
        kienen kikken kilogramo kilometree kilometrees kilometrer kilometro kilometrons kinken klaasse klakken klanken klanten klassen klassiek klebband klebern klebten
        kleides kleie kleien kleigebied kleijne kleinem kleinen kleiner kleins kleinsde kleister klemmst klemmte klemt klene kleren kletten kleumen kleunen kleurden
        kleuring klikten klimgebied klimmaat klimmetje klimming kline klingen klingle kliniken klinkten klokken klonisch klonische klonken klopjes kloppen klote klungel
        knallen knapjes knappen knikken knipjes knippen knoopjes knopen knopfen knopfes knopten knospen knotjes kodisch koelstof kolen komisch komische komischen
        komischer komisches komme kompatible komplott konnern konnten koopjes koper kopjes koppen koralle korallen kornen koter kotze krale kralen krallte krallten
        kransen kranste kranten krantje krasje kraspen krasten krater kratsen kraulen krausen krikken kringel krissen krollen kronten kroonen kropjes kroppen krossen
        krullen kubel kubeln kurassen kurble kuren kurzten kuttingen kwallen kwanten kwikken laagste lacerale lacerales lacerali lachen lacherig lachern lackierst
        ladling lageren lagering lagerns lagerschade lagerst laghi lagst laichen laichte laisses lanaste landing lanen lanes langden langeas langees langoer langte
        langten langues languette langueur languste larchen larding lares largues largueur lastado lateraal laterals latio latrale latrali latschen lauding lauen
        laufern lauschen lavello layer layers leerbaar leers legend legende leggea leggende leggerla leggeva leghera legnera legte leguera leichte leichtes leidig
        leidigen leier leistung leistungen leker lemiers lending lener lengtes lente levares leveling leveras leviate levies levigaci levigai levigale levigali levigami
        levigane levigante leviganti levigare levigarti levigase levigasi levigaste levigasti levigavi leviger levirati levitate levitati levrier levriers levures liada
        liado liasses liate libaras libas libello liberas liberia liberta librais libraos librea libreas librees librera lichates liche lichees liches lichtens lichters
        lichtje lichtjes lichts lichtte licio licites liebend liebende liees liera liesses lievers lievres liggend lijabas lijadlas lijadlos lijadnos lijalas lijalos
        lijamos lijanos lijaos lijaras lijaros lijen lijmden liken liker likes limaas limabas limacos limadla limadlas limadlo limadlos limadnos limai limait limalas
        limalos limamos limanda limandas limando limanos limante limanti limaos limaras limaros limarte limarti limaste limasti limazas limeens limeles limen limenes
        limese limiest limiste limitad limitee limnite linaire linar lincear linceare lindare lineage lineair lineale linearse linease lineate linekes linen linera
        linguete linkerband linkjes linksen linkser linkste linkten linse liquidae liquidee liquine liras liscino lises lisiado lisio lissees listalo listando listano
        listato listavo listeado litado literal literales livres livrets llana llanas llancas llaneas llanita llanota llantos llata loading lochen lochre lockern
        locking lockout lockouts lockre loger logerent logeur loggende loguer loker lomadas loner longe longeat longent longuette looping lords loschen loscher loschern
        loucher lourdas lourdes lucidio lucidlo lucio luido luisses lujadas lujados lunge maagden maaiden maalden maandern maanen macetas macha machas mache machoire
        machon macquant madiere madison magia magie maglina magline magnos magos maillions maillots makings maletas malia malie mamette manados manante mancado mancalo
        mancando mancane mancanze mancarti mancaste mancasti mancate mancati mancato mancavo manchan manchas manchen manciano mancillar mancillares mancino mandano
        mandante mandanti mandaos manden mandons manea maneas manejas maneota maneotas maneras manetos manetta mangano mangante mangoes manicorto manidos maniere
        manillon manipola manitas manopla manoquant manovelle manquait manquat manquates manquent manta mantas mantea manteas mantle manufacturar manufacture
        manufacturier manzano maquant marca marcale marcame marcane marcano marcante marcanti marcare marcas marcase marcate marceas marchais marchaos marchee marches
        marchia marcias marcje marctje mareaje maretas marette marocha marquant marquante marquantes marquants marscha marsche marucha maruchas maser mason masquage
        masquant massiere massige massimai massing massini massiva massivi massivo mastre masure masures matchas mater matereau materiala materiane materiare materiarle
        materiate materiel materiele maternal matigere matser mattere mattiere maxim maximen mazette mazettes mecanicas mecanices mecanisa mecaniza mecanizo mechanici
        meddo media mediad mediada mediado medidla medidlo medio meertjes melanica melanico melanique melees meles melle mensuree mensures mentada mentalen mentare
        meras meren messing mesurement mesures mesusee metalino metalizo metallen metallini metallino metanica metiere metilico meublees meubles meuglees meugles meure
        middenmoter miden miedest miertjes mildest millesimee millimetrai millimetree millimetrees millon minamos minaste minderst mindert mindesten mindestmas
        mindestmases mindre mindset minemos miner mineraje minerajes mineralole minerals minette minettes minia miniale miniami miniamo miniamos minias minie miniem
        minieme miniemos minimetro mininas mininos minio minios minium minorale misging miste misting mistrato mistura misturata misturato misuraca misurala misuralo
        misurano misurava misuravo misusing mitberechnet mitbezahlt mitkamt mitnehme modelalo modelee modelelo modelle moderas moderen modulair modulare moerden moers
        moetjes moiteur mojeras mokeren molante molaste moleras moliate mollate molleggi molleggino molte molybdene momeras monada monatto moncada mondada mondana
        mondare mondate mondato moneada moneare monello monetaggio monetar monetare monetato moniato monieren moniert monimento monocasio monoplano monopole monster
        monsteren montadla montado montaggi montagne montague montalo montano montaren montarle montarme montarne montarse montarte montavo monteada monteare montearen
        monteen monteer monteert monterden montere monteron monteuren montiana montieren montierst montina montoggio montra montrer montuna monture monturen moore
        moortjes moras mordele mordelo mordetti mordido moreen morello moren moreras moretti moretto motar moteras moths motorie moulees moulted moulting mounded
        mounding mountainbikers moveras moveren movimiento muecas muele mueles muescais muiscas mules mulle multipel multipele multiplie mundest munimos munster
        munteren munting muscas muselle muser mussing mustern mustier mustre mutiere nachkauf nachmesse nachruste nasri nastrai natri necesite necessita necessitee
        nederland nematico nenguna nenguno nether neumaticas niete ningunea ninguneo noches nombree nominaal noral normaal normane normare normarle normate noshing
        notching noting obees oberees obern obers oblicuo obliquai obren obres occhiellai occhino occulta oculata odere oderen oefenen oenen oeren oeuvrant offen
        offenbare offenbarter offence offences offende offends offenses offeren offerts offload offne offnern offners offnest offres ogelijk ogelijke oilles ojalado
        ojalados ojaleis ojeales oltrepassale oltrepassane oltrepassar oltrepassarle oltrepassarne oltrepassate omberen omologala omologale omologalo omologane
        omologano omologante omologare omologaste omologava omologavo omschakelaar omschrift onbedeeld onbetaald onces ondearan ondearen ondeaste ondeen onderdaan
        ondereen ondergaan onderkast onderken onderkent onderkin onderkop onderstal onderwant ondieren ongebouwd ongedeerd ongedeerde ongekend ongelijmd ongeren
        ontbraken ontbreek ontbroken onteren onweren opalizzato opbaren opbomen opborgen opeen opende openden openend opengaan openging operable operacion opgebouwd
        opgedeeld opgedeelde opgelapt opgelost opgepakte opgepast opgeplakt opgeruid opgetast ophoren opificio opinable opining opposee opposte opruk opschreef
        opschrijft opschrikt opschuift optino optionale optionele optionnel optons oreas orecchine orefice oreillers orejeras orifico orifizio originadle originame
        originane originare originarle originase originate originell orignal orilles orizzontaci orizzontagli orizzontai orizzontami orizzontane orizzontare
        orizzontarle orizzontarli orizzontasi orizzontate orizzontati orizzontavi ormilles orseilles oseilles otions ouderen outrant outsize ouverts ouvrait ouvrat
        ouvrent ouvrier ouvroir ovaladas ovalalo ovalamos ovalando ovalano ovalato ovalavo ovaleis ovalizzalo ovalizzano ovalizzavo overschrijven overture overtures
        ovulado ovulados paats pacante pacas paddeln paden padilla padillas paesaggi paesaggio paesano pagador pagante pagines pailla paillas pained pains paisano
        paissant paissent pajilla pakken palancra palancras palante palatine palease paleggia palen panante panchas pandden pandino paner panilla pannier pansage
        pansages pansant pansent pansier panted pantera panteras pantins papal papilla paque paquettes parades parador parafando parafano parallele paranca parante
        paratie parcage parchas pardees pareces parecio parees parei pareles parenti parerti paresse paressee paressees paresser paresti paretai paretti parfois parides
        parie parios parir parire paris parite paros parquet partent parti partiere partirle partirme partirne partirse partirte pasados pasarte pasaste pasate pasbout
        pascano paseador paseantes pasible passaat passade passades passagers passagli passait passale passalo passames passando passare passarti passaste passasti
        passat passates passati passato passavo passeggi passeggio passest passibile passible passino pastellas pastern pastigli pastillais pastilles pastine patanes
        patates patatine pateado patella patellas paten patenes patenten patern pates patie patient paties patimes patinees patineis patini patino pations patir patire
        patirla patis patitine patito patos patrie patrino patsten patta pattane pattano pattees pattent patters pattie patties pattinai patto pattues patulla patullas
        patzern patzten pausano pausant pausanti pausent payador payante payantes paysage paysages peale peales peals pease pecados pecante peces pecio pedalai pedalale
        pedalane pedalar pedalare pedalate pedalean pedalear pedaleas pedalee pedaleen pedalees pedalera pedaleur pedanea pedante pedanti peddler peddles pedicelle
        pediles pedino pegados pegales pegante peignee peignees peignons peintre peintura peinturee pelados pelales pelante pelanti pelase pelatina pelatine pelease
        pelotage penados penales penante penanti pendales pendano pendante pendelte pendenze pendeste pendete pendette pendido pendiente pendilo pendio pendono penino
        pennino penones pensada pensante pensanti pensino pente pentente pentite penture pepante pepanti perales percale percales percames percant percate percates
        percebe percept perchage perchages perchee perchent percio perde perdent perdente perdesse perdetti perdite perece perecee perecio perfetti peril perimer
        perimis peris perite perlage perlent perlite permease permeasse permetti permisible permision permissibile permistion permitia permitias permitidla permitidlas
        permitidlo permitidos permitila permitilas permitilo permitio permitira permitiras permits perms permute pernios pernotti peroracion peroraciones perorations
        peros persbuis perseus pesadas pesadlo pesadlos pesadnos pesador pesales pesalos pesamos pesando pesane pesanos pesantes pesaos pesaros pesarte pesarti pesaste
        pesasti pesate pesati pescado pescados pescana pescanas pescante pescanti pesent pessano pesse pesta pestala pestanea pestaneas pestante pestanti pestas pestata
        pestava petados petales petiet petilla petillas petina petiote petitie pettine pettini pettino piagnone piagnoni piallar piantane piantine piaste piaster
        piattine piattini piattino piattone picage picciolo piccono piccoso picolo piconera piconeras picones picotage picotes pidales piede piegatile piegatili piege
        pienone pienoni pierces pieride pietina pietinas pigeons pigione pigioni pigions pignole pignoli pignore pignori pigrone pigroni pijotes pilant pilar pilars
        pilastra pilastre pilatine piletta pillais pillaos pillaras pillards pillares pillaros pillas pillear pilonera piloneras pilones pilotaje pilotale pilotane
        pilotare pilotase pilotate pilotee pilotes pinada pinastre pincees pinceis pincers pinchad pinches pined pines pingada pinjada pinnada pinnes pinoles pinonea
        pinonear pinoneara pinonearas pinonees pinoneros pintaba pintadla pintala pintana pinteada pinteras pintora pints pinture pinzada pinzones pionces pionera
        pioneras piones pionnera pionneras pionnes pipeta pipetea piporro pipotes pirofile pirofilo pisador pisados pisas pises pison pisoton pissant pissent pistada
        pistage pistais pistees pisteis pisters pistura pitada pitarro pitas pitched pites pitillas piton pitones pitorreo pitstra pitta pittino pitto pittura pivetta
        pivotee pivotees pivoteis pizotes placeado placito plaine plaint plaints plaited plakats plakten planeado planken planque plant planteado planted plants plantte
        plaquee plaquette platane platas platead plateando platico platilla platina platinas platinee platines platino platinos platins platone platste platten plattes
        platzte plautine pleated plega plegadle plegadles plegale plegales plegarle plegarles plegase plekken pliantes pliat plint plokken plongeant plonger ploteado
        plukken podales poeiert poetata pognons poignes poignets poignons poins pointas pointes pointure pointus polakken polaque police polie polierst polline pollini
        polluce poltert poncage ponds ponencia ponencias pontage pontata pontent pontera ponteras ponts porcata pores portaba portada portadilla portadillas portage
        portala portara portasela portava porteas portees porteis portele portene porters portese porties posador posados posantes posanti posiert possano postale
        postane postare postata postate postillas potage potata potee potencee potencees potenciais potenciaos potencie potente potentes potenze potes potines potorro
        potree pottage pouches poule pouline pounces prakken prallen pramiere prasent prasentes precedant preceden precedence precedenze precederte precedeste precedete
        precedette precelente preciously preciso precito predala predale predali predenti prefiere prementi premer premere premessa premesse premiar premiare premiele
        premieme premiese premir premise premuere prenada prenado prenados prendada prendado prendados prendente prensaba prensadas prensadla prensadlo prensadlos
        prensadnos prensala prensalo prensalos prensamos prensando prensanos prensaos prensara prensare prensaros preparadlo preparalo preparando preparano preparato
        preparavo prepasado presa presada presas prescrit prescrite prese preseas presences presens presentai presente presentees presenteis presenties presentii
        presentjes presenzi preses preset presets presientes presione pressaci pressage pressai pressala pressale pressali pressalo pressami pressane pressano pressanti
        pressar pressarle pressarne pressarti pressas pressasi pressasti pressate pressava pressavi pressavo pressend pressens pressent pressentes pressenti presses
        presseur pressier pressies pressino pressuree prestais prestaos prestare prestata prestati prestato prestes preston prestos presumio presunti presure preta
        pretas pretent preti pretina pretinas preusse prevedente prevent prevents previere prier prillar primear primeer primeur primmer princes prisent prision
        prisioneras prisionero pristes probita procedent procedente procent profbond profilee profite profondata profonde profonder profondila profonds profound profund
        profunda profundes profundizad prohibee prohibia prohibias prohibidla prohibidlas prohibidlo prohibidlos prohibidnos prohibila prohibilas prohibilo prohibilos
        prohibimos prohibinos prohibio prohibios prohibira prohibiras prohibiros prohibite prohije proibira proibiro proibiva proibivo prois projector pronent proper
        propere propio proprie proprieta proprietaires proprietaries proprietor prore prorector proscribe proscrire proscritte proscrive prosector protee protektor
        protestor provably proyector prufern pruften pruimer puassent puces puentee puestas pulente pulsada pulsadas pumente punal punched punente punera punete
        punetera puneteras pungera puniera punieras puntada puntara puntaras puntea puntear punteara puntearas punteas punteria punteros punters punts puntual punturas
        purgada purgadas pussent putos puttini puttino quadralo quadrano quadravo quadrio qualify qualmte qualte quantica quantify quantile quias quietada quietadas
        quietado quietados quijada quijadas quimado quinada quinadas quinado quinados quintada quintadas quintado quintados quios quistada quistadas quistado quistados
        quistion quitaba quitabas quitadla quitadlas quitadlo quitadlos quitadnos quitala quitalas quitalo quitalos quitamos quitando quitanos quitaos quitara quitaras
        quitaros rabidos rabiles rabiotes rabones rabotas raboteas rabotees rabots raboutes raccorci rachten raciaal raciale raciales racking radal raden radiadle
        radiadles radiala radialas radialos radials radiame radiames radiane radianes radiaos radiare radiares radiarle radiarles radiase radiases radiate radiates
        radicaal radicale radicales radiele radieles radikale radikales radila radile radiocomandalo radiocomandano radiocomandavo radions radis radotes ragotes rahmans
        raide raiders raides raidi raiding raido raies railles raining raising ralease raleases rales ramures randden randern ranides ranures rapados rapiega rapii
        rapines rapportai rapportas rapportee rapportes rapportje rapures rarerem rarsten rascada rascado rascados raschio rasen raspten rasques rastern rastrallo
        rastremala rastremalo rastremano rastremava rastremavo rastren rastrillo rasures rateles raten ratsen rattlers ratures rauerem raumens rausten rayares rayeres
        rayions raymons rayones rearm rearmed reassort rebajabas rebajada rebajadlas rebajadlos rebajadnos rebajado rebajalas rebajalos rebajamos rebajanos rebajaos
        rebajaras rebajaros rebanadas rebanados rebasadas rebasados rebotes rebujadas rebujados recaten recates recatos recesas receses recesos receten recetes
        rechausse reche rechen reches rechnen rechner rechst rechtens rechters rechtsen rechtser rechute rechuter rechutes reciten reciter recites reckten recommenced
        recontado recordado recorrio recortad recortadlo recortalo recortando recorvado recostado recoupee recoure recouse recover recte recten rectes rectors recurrido
        recutes redacteur redacteurs redaction redactor redactores redaktion redando redas redencion redondais redondea redondeas redondeo redondeos redondons redonna
        redonnas reduccion reduceer reduces reducid reducidle reducile reducir reducirle reductio reductoras redunda redundas redundo reemplace reenforced reeve
        referencee referencie referente referenze reflectar reflecto refrenada refrendada refrentaba refrentad refrentara regaining regalabile reggies reggina regia
        regian regidas regis regna regolatile reguladle regulale regularle rehaussee rehires reichte reichten reien reiften reihten reiles reiling reimen reina
        reinforce reitres relaces relajadas relajados relamed relation releame releanse relee relegase relegases relejase relejases reles relevase relevases relevee
        relieve relvase relvases relve remarque remarques remblokje remires remolde remole remoled remoler remoline remolqueis remonda remondas remondo remontage
        remonte remontese remontre remontree remordue remordues remorquas remorquee remorquees remoste remoter remplacee remplaces remplage remplaza remplie rempote
        renamed renen rennern renovable renover rentare rente rentent renter rentree renverse repaced repaces reparais repareis repartais repartas repartes repartias
        reparties repartios repartos reperer replacas replace replacees replayed replaying repolie reportado reptante requiebre requieres requiers requimes require
        requises requites requives resano rescano resent reservee resoort resort responsabilizad ressent ressert resserve restado restalo restando restane restant
        restarte restaste restate restato restavo restino restrine restrinse retaining retajadas retajados retares retende retendue retene retenle retenme retente
        retercer reterse retines retinue retiras retirees retireis retiros retives retonde retorque retorques retos retoupe retries retrocedo retrocesso revenue revere
        reveree reverence reveres reverie reverle reverme reversee reverte revese reveuse revires revolque rewires rialo ribbers richiese richiude richten richter
        ridders rideras ridicibile ridonda ridondo ridossa ridossi ridosso riefen rieleis rielse riemschijven rietblad rifen rifossi rifosso rigio rigrida rigridi
        rigrido rijders rijdier rijer riling rimasse rimassi rimeles rimen rimessa rimesse rimessi rimesso rimorsa rimorse rimorsi rimorso ripiegalo ripiegando
        ripiegatile ripiegatili ripiegato ripiegavo ripiena riprega ripregano riscada riscado riscados rischino risco riserrar riservar riserve rispiega rispiegano
        risquas risquees risqueis ristano ristante ristringe ritengo riteni ritenni riteno ritzen riverse robamiento robbers robores rocada rocas rocillo rodello
        rodiale rodialo rodilio rodilo roelant roiling rollendem rollier roncada roncado roncados rooting rosada rosado rosados rosar rosas roscaba roscadas roscais
        roscamos roscando roscara roseada roseado roseados rosicar rosillo rosques rotando rotares rotaria rotatie rotie rotone rotoni rotos rotting rotunda rotundo
        rotures rouage rouant rouging roulage roulait roulat roulaux roulent roulerent rousing routant routeing rozamiento rozamientos ruandes rucksicht rudas ruden
        rudes rugidas ruiling ruilsysteem ruiltjes ruime ruimste ruining rundens rundjes runen runes rutschst sacche saida sainado saine salare salata salate salato
        salcoche salcoches salda saldaba saldadas saldala saldalo saldana saldano saldante saldara saldarle saldarme saldarne saldarse saldaste saldava saldavo saldeer
        salderen saldiate saldre saleare salen salgare salia saliate salidla salinato salines sallare salle salmare salpare salpata salpate salpato saltare saltata
        saltate saltato saltine saludare saludate salvare salvata salvate salvato sanci sancoche sancoches sandd sander sapei saperei saperi sapessi sapri sarei sartine
        saten sater sates satinando satinee satteln sattelt sattest sattle sattler saturen sazio sbatter scaldare scaldata scaldate scaldato scanalalo scanalano
        scanalavo scander scanner scapola scarola scattai scatten scatter scelle scemale schaaft schabel schaben schabtet schachten schadel schadels schaden schafen
        schafft schagen schakal schakals schakelbaar schakeljaar schaken schakering schakers schakert schalden schale schaler schalien schalken schalle schallen
        schalltet schalmen schalten schaltest schalung schamel schamels schamen schamtet schapen scharen scharft scharnieren schartet schat schatter schauen schaukel
        schaukelt schautet schaveling schaven scheele scheida scheide scheiden scheien scheijen scheijven scheine scheise scheisen scheite scheiten schelde schele
        schelen schellte schelme schelte scheltet schenen schenken schenkern scherbe scherben scherer schetter schicht schiebe schieden schiefen schielen schienten
        schiepen schieren schierer schiesen schieten schifting schijff schijten schinkel schinnen schitter schlacht schlaft schlass schliss schlots schluss schlusse
        schlussle schmahe schmahen schmalern schnaube schnauben schnelle schoenen schol scholen scholle schoorl schoss schotser schrabben schrager schrale schrander
        schraper schraubern schraubte schraubten schrauwen schreef schreibe schreiben schreven schrijf schrijven schroder schroefje schroeien schroeten schroff schulen
        schultet schussel schutter schwacht schwanz schwartz schwatz schweiser schweitzer schweizerische schwelle schwerter sciatola sciatti sciatto sciotter scompara
        sconnette sconsigliala sconsiglialo sconsigliamo sconsigliano sconsigliava sconsigliavo scontabile scorgente scostata scostato scotola scratchas scratche
        scratchees scurite sealde secando seccion secher sechster sechswochig secondee sectien secunde securise sedizione seeds segando seguendo seguida seguido seiche
        seien seiften seilten sektion semiten sempre senor separabas separadla separadlas separadle separadlo separadlos separadnos separadoras separait separalas
        separalos separame separamos separando separane separanos separant separante separaos separaras separare separarle separaros separarte separase separaste
        separatas separateur separatie separatile separation separee separerent separiate seres serienmasig seronda serondo serraglio serrale serrame serrames serrane
        serrare serrares serrase serrases serrate serrates serrees serreis serretje servage servages servaggio servicie servie servigio servile servilio servime servine
        servire servite servizio sesione sessa sessi sesso settile settili sevrage sevrages sewer sewers sfaldare sfaldate sfalsala sfalsalo sfalsano sfalsava sfalsavo
        sfasata sfasato sfottile sfottili sfumando sgancino sguanci sguancio shafted shafting shammed sharped shatter sheerer sheering shiftier shimmied shingle shirted
        shirting shits shitting shooter shopping sibilar sicker sidewalks siegel sieling siembre sierren sierres sifted sifter sifters sifting sifts sigilar sigle
        sijtema similare similor simpel simpele simular singe singel singla singlo singole siniestra siniestro sinisera sinister sinistere sinistrai sinistree sinolo
        sipping siringi sitze skimmed skipping slaande slancio slander slangetjes slatten slicker slickers slimmed slipping slits slitter sliver sluiering sluiting
        smale smaler smallar smile smiller smontatile smuller snappend sneering snicker snickers snifter snifters snipped snipping snoetje socken sodamente sodar sodee
        sodees solada soladas solado soladura solamene solar soldaba soldabas soldadera soldadla soldadlas soldadlo soldados soldala soldalas soldalo soldando soldano
        soldara soldaras soldare soldaren soldate soldees solder soldeur soldier soldner soldo soleada soleadas soleado soleren solidada solidadas solidado solidar
        solideo solideren solio sollado soltada soltadas soltado solveren sondada sondadas sondado sondeer sondees sonderen sonette sople soples soplido sopore sopores
        soportas soporteis sopporti sopporto sopprime sorgente sornette sorter sosamente sostata sostato sostituisse sostituiste sostituitili soterren sottie sottise
        soudes soudeur soudier souer soule soulees soules sounder soupe soupera soupes spaande spaces spacial spacier spading spahers spaio spalken spancio spangetjes
        spanier spanjer spannar sparata sparate sparato spare sparers spargente spatinato spatola spatten spatter spaying spazino spazzatura speciaal speciale specials
        specieux specifiai specificai specifichi speechen speen speichern speichre speien spelling spera sperar sperare sperren spesa spesasi spesi speso spewing
        spezial speziales spiacer spicing spieden spiegle spieken spielen spieling spien spier spieren spies spiesen spinale spinales spinde spindel spindels spinder
        spindes spine spines spinner spinole spinule spireas spite spits spitter spitzen spitzle spitzte splaine splatter spliced splices splinte splinted splinter
        splitser splittre splitts splutter spoeling spong sporgenze sporgeste sporgete sporgette sporing sporte sporter sportes sposata sposato spossata spossato
        spostala spostalo spostano spostava spostavo spotted spraken sprei sprig spritze spumando squadre staafde staagde staalde staander staarde stahlen stahlern
        staider stake stalden stalken stalkern stallen stanchino standaards stande standerd standerds stangetje stanker starare starasse stares starker starkes starkte
        starling starren starretje starrier starrte starter startes starves stasse staten stater states statine statola statten stealing stecher stecken steckers
        steegers steemers steen steencirkel steeped steeper steeping steker stekken stekker stekten stelline stelling stelmoer stelmoeren stender stengetjes steppend
        sterasse sterbe steren sterer steriline sterker sterking sternen stero sterven stette stickier stickler sticklers stieben stifter stifters stijving stikker
        stikkers stine stingi stinging stinker stinkers stirasse stirling stirrer stive stoke stokes stolido stopped stralen strande strase stratta stratte strause
        strebern strebten streden streite strekte strelen streling strepen strepto stresse streste streuen streute streven strewed striasse stricker strickers strigi
        strikes strinai stringai stringei stringhi strini strinsi stripes stritte strobes stroe stroek strofes stromes strusse strutta strutte strutto stuella sturasse
        sturben sturmen stute stuten stutten stutzern stutzte stutzten stuurden stuurgroep stuurgroepen stuurhuis stuurreep subisse subministra subministrada
        subministrado subprime substituye suction sudando suela suera sujetion sumado sumanlo suministraba suministradla suministradlo suministrala suministralo
        suministrando suministrara superale superame superane superarle superarme superarne superarse superarte superase superate superba superfici superfinie
        superioras superiors superna supiera suple suples suporte suportes suporto supporci supporli supporlo suppormi supporro supporsi supportai supporvi supposti
        supposto suppot supprimas supra suprime suprimes suprior supriores supurar supurare surette surfacee surisse surprime surprimes susse suturen suzione svezzera
        svezzero sviziera sviziero swaddle swamped swatter swifter swindle swindles swopped systeemgericht taalles taanden tabberd tablones tablons tabor tabulaire
        tabulaires tabular tabulares tacache tacce tacchettai tacchettii tacetas tacks taclons tagliaci tagliai tagliala tagliale tagliali taglialo tagliami tagliamo
        tagliane tagliano tagliante taglianti tagliare tagliarti tagliasi tagliaste tagliasti tagliava tagliavi tagliavo taillee taillees tailless taillis talado
        talador talados taladraba taladradla taladradlo taladrala taladralo taladrando taladraos taladrara taladras taladres talas talia talie talione taliones talions
        tallais tallaos talle talles talliate tallonai tallons talloze taloneas talonees talonnes talos talpone tamango tambero tamburco tampered tampering tampers
        tampini tamponai tampones tandean tandeen tandeln tanedor tanen tangram tanne taons taped tapelas tapes tapetes tapeurs tapines taponas taponeis taponnes tapons
        tapotas tapotes tappend tapper tapponi tarante tardes tarliate tarmano tarpano tasasen taschen tasen tasered tasering tasschen tauchen tausche tauschten
        tegliata tegliate teilles teine teintee tejedor tejones telaino telbare telescopi telescopia telescopiche telescopicos telescopio telescopisch teleskopische
        temedor tendedor tendeer tender tendile teneur tenile tenite tensale tenseur tensie tensive tente terca tercas terminables terminaci terminadles terminagli
        terminai terminal terminalas terminale terminalos terminals terminames terminami terminares terminarles terminarli terminases terminasi terminates terminati
        terminavi terran terrapin terrein tesones tessile tetines tetonas tetons teutones thicket thickets thickset thomson thorough though threats ticchetti ticker
        tiede tiefseen tiente tiercas tifante tigrante tigrata tigrato tilbare tille tilles timber timbree tingle tingles tinte tiple tirades tiradla tiradlo tirando
        tirane tirarte tiraste tirate titaban titando titanico titanin titano titaran titaren titasen titrage toallas tocchetti toche toelopen toestuur togliate
        tolerante tolones tommel tondeur tonillo tooted toothier topetas toque tordillo torillo torique tornalos tornante tornello tornilo tornirlo tortillo tostale
        totes touates touchee toues tournant tournants tournates tourtes touts trabers tracche traccion tracera traceras tracers tradite traer traera traeras traeros
        trage tragers traglia tragter traiano traille trailles trails trainar traineer traineur traite trajano trajera trajeras traktion trallas traller tramate tramera
        trameras tramero tramiate trammed trammel tramper trampers trampte trane tranen transera transero transportad transportraad trante trapajo trapanio trapazo
        trapera traperas trapero traperos trapped trappeur trappeurs traps trascinatole trascinatone trasega trasegas trasego traslera traslero trasmision trasmite
        trassen trassero trastera trasteras trastero trasteros trastras trasvera trasveras trasves trata trato traversait traversane traversaste traversat traversate
        traversent trawler treading treads trecker treiler trekkar trepano triada triades triado triage triales triangel triangles triangule trias tribals triggre
        trigle trile trilles trimmend trinale tringlas tringlee tringlees trinquates trinquees trinquete trinquettes tripa tripale tripe tripel triplee tripoteur
        tripper trippers tripple tripula tripule triquetes tritane trommle tropo troque trough tubera tuberai tubolaci tubolai tubolale tubolali tubolami tubolane
        tubolar tubolarci tubolarle tubolarli tubolarmi tubolarne tubolarsi tubolarti tubolarvi tubolasi tubolate tubolati tubolavi tubulari tubulures tueca tuecas
        tuera tueras tuerces tuertas tuerzas tumulaire tumular tuneless tuneria turante turbazione turbazioni turca turcas turnante tusasen tusch tuschen tusen tutes
        typering uberschreiben uberschreite uitbomen uitende uiterdijk uiterwijk uitgeboomd uitgefloten uitgehoord uitgeloten uitgemoord uitgeruild uitgesleten
        uitgesnoten uitgespoten uitgestoten uithalers uithoren uitsluiten uittoren uitvaller uitvinden uitvoerig unbemannt unbenannt uncinai uncio uncion unere uneren
        uneres ungeheilt ungeheilter ungekannt ungekurt ungeteilte ungleichmasig unieren unieres universa universeel universell unregelmasig unseren unserer unseres
        unsre untainted untaren untares unterlagt untersagst untiere untieren untieres usabile usale useable usuraio usurario usure vaciante vaginas vains vales
        valevole valiant valvees valvule valvules vanas vantage varante varcante vareis varende vares variait variance variane varianos variantes variantie varianze
        variarte variaste variat variate varices variees varieis varient varinas vastaso vasthoud vecchina vecchine veccia vedadlo vedando veeboten veenweg veerboten
        veering veeweg vegen vegende vehicule velen velende velocista veltmaat venatile vendado vendile veniel venile ventage ventail ventilait ventilan ventilant
        ventilar ventilat ventilee ventine ventole ventril venutile verande verband verbanden verbaten verbauten verbeeld verbeist verbeten verbinden verbist verbloden
        verbunde verbust verchroom verchroomt verdeed verdenkt verdere verdicali verdichting verdienen verdunden verdween veredeld vereende vereinst vereint verengde
        verenge verest verfangen verfangt verfing vergalt vergangen vergeeld vergende verging vergist vergoden vergoten vergunden verhalt verhangen verhangt verheeld
        verheilte verheist verhing verhoop verhouting veriest verificale verificame verificane verificar verificarle verificarme verificarne verificarse verificarte
        verificase verificate verifieer verifieur verjongend verjongt verjungen verjungst verjungte verkabel verkabelst verkablung verkavelt verkeilst verkeilte
        verkende verkilt verkoop verkunden verlanding verlangen verlangt verlast verlaust verlebt verlebter verleger verlegst verlegte verleit verlengt verlept
        verlesung verlet verletzt verligt verlijden verloden verlost verloten verluchting verludst vermand vermist vernetzt verniciala verniciava vernist veroden
        verpand verpanding verpetzt verplichting verpoten verreist verrenkt verrenkte verrenkter verrenkung verrichting versad versankt verschraubst verschroben
        verschuil verschweigst verschweist verse versende versendung versengt versengte versengter versenke versenkst versent versetz versificare versifier versing
        versinkt versino verslag verslijmen versneller versnellers versnellingshandel verspon verstand verstehbare verstellbare verstelle verstellens verstellingen
        verstellter verstellung verstilling versust verteile verteilst verteller vertellers vertelling vertelt verticalen verticals verticele verticeli vertile vertilt
        vertust vervaagt vervaet vervagen vervalst vervat verveeld vervelt vervende vervilt verving vervingen vervult verweg verweilte verweist verwende verwijdend
        verwijder verwilderd verwunden verwust verzahlt verzahnst verzand verzanken verzenging verziet verzinken verzocken verzoden verzoeken verzoet verzonden
        verzonnen verzoop vesicle vestile vetate vetrificare vierende viering vierkantig vierkantje vierkantte vierteilt vierteilte vietaci vietai vietala vietale
        vietali vietalo vietame vietami vietane vietano vietante vietanti vietare vietarti vietasi vietaste vietasti vietava vietavi vietavo vietiate vietta viette
        vigesse vinage vinas visee viser visibile visos vistata vistate vistati vistato vitata vitate vitati vitato vivesse vleerweg voederen voeger voerende voering
        voilure voituree volens volgers volture voorbeen voorbind voorbond voordeur voordouw voorhand voorhanden voorland voorlas voorpand voors voorschrijf voortand
        voortouw voorviel voorwand voorwas vorbereite vorbereitest vorboten vorderde vorderden vorderreihen voreinander voren vorfanden vorhangen vorhauten vorkauten
        vorlauten vorlegt vorsatz vorsetzt vorste vorstellbar vorticale vorticali vorwanden vouwden vouwwand vouwwanden vraies vries vrijviel vrijwel vroeder vrouwen
        vulling vullingen vurende waagrechten waanden wackelst wackest waden waiters walsten walters wandeln wandern wandten wanen wankelt warde warters washers wassers
        wastes waters wauters weden wedren weens weerden wegenis weges weggesleten weggeslopen weidest weiger weiht weilen weldeed weliger welkome wellten wench
        wendiger wenigsten wenigstes weren westers wickelt widerst widmest widows wiegelt wielded wielden wielren wiemelt wierden wiest wight wights wildest windest
        windstarke winkle winnows wiphout wirbelt wisselaar wizened wobbes wombles woorden worgden wursten wusch wussten wusten zadelden zadelen zadelrug zadelvast
        zahen zaher zanen zapabas zapadas zaparas zapateas zapatos zegen zetting zifting zischen zitaten zittern zolders zollner zollners zoner zubindest zufuhrung
        zugeschweist zukaufend zulaufen zusammenfallen zusammenfalte zusammenhalten zweier zweigte zwiefach zwischenstock zwischenstocke zwitters zwoller zylindrische
        """u8;
}
