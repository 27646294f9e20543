using System.Collections.Frozen;

namespace Lugwork.Reading;

/// <summary>Words of an advertisement that say nothing of an interface, in six languages, without accents: of the sale, of the use, of wear, of time.</summary>
internal static class TalkWords
{
    /// <summary>Of the sale, the post and the meeting.</summary>
    public static FrozenSet<string> Sale { get; } = Set(
        "shipping postage posting posted delivery courier parcel collect collection collected pickup payment pay paying paid cash card transfer price priced offer offers bid bargain refund returns warranty buyer selling sell photo photos picture pictures pics message questions reserve person sent shipped boxed packed"
        + " versand porto versandkosten lieferung paket abholen abholung selbstabholung zahlung zahlen bezahlen uberweisung bar preis preislich angebot angebote rucknahme rucknahme garantie gewahrleistung kaufer verkaufe verkaufen privatverkauf foto fotos bilder fragen anfragen nachricht tausche verschickt versendet abgeholt verpackt personlich"
        + " envoi envois livraison colis frais port poste postale retrait paiement payer payement virement especes cheque prix offre offres remise garantie acheteur vends vendre photo photos question questions message echange expedie expediee envoye envoyee emballe propre"
        + " envio envios portes gastos paquete recogida recoger pago pagar transferencia efectivo bizum precio oferta ofertas devolucion devoluciones garantia comprador vendo vender foto fotos pregunta preguntas mensaje enviado enviada embalado mano"
        + " spedizione spedizioni pacco consegna ritiro pagamento pagare bonifico contanti prezzo offerta offerte reso resi garanzia acquirente vendo vendere foto domande messaggio permute spedito spedita imballato mano"
        + " verzending verzenden verzendkosten pakket bezorgen ophalen afhalen betaling betalen overmaken contant tikkie prijs vraagprijs bod bieden biedingen retour garantie koper verkopen verkoop foto fotos vragen bericht verzonden opgehaald opgestuurd ingepakt");

    /// <summary>Of how it was used and kept, of the owner's life and of the weather.</summary>
    public static FrozenSet<string> Life { get; } = Set(
        "ridden rode ride rides riding used kept stored garage cellar shed attic drawer weather rain sun summer winter spring autumn season colour color paint shiny scratch scratches scuff scuffs dent dents rust dust mud clean cleaned polished holiday birthday wife husband daughter son kids town village weekend evening morning today tomorrow fun dream tea coffee budget bargain"
        + " gefahren benutzt gelagert garage keller schuppen wetter regen sonne sommer winter fruhling herbst saison farbe lack lackierung kratzer delle dellen rost staub schlamm sauber geputzt urlaub geburtstag frau mann tochter sohn wochenende abend abends morgens heute morgen spass traum kaffee"
        + " roule roulee roulent utilise utilisee garde cave grenier meteo pluie soleil ete hiver printemps automne saison couleur peinture rayure rayures griffe griffes eclat eclats bosse rouille poussiere boue propre nettoye vacances anniversaire femme mari fille fils semaine soir matin aujourd demain reve cafe"
        + " usado usada usados rodado rodada guardado guardada garaje sotano trastero lluvia sol verano invierno primavera otono temporada color pintura aranazo aranazos rozadura rozaduras golpe golpes oxido polvo barro limpio limpia vacaciones cumpleanos mujer marido hija hijo semana tarde tardes manana hoy sueno cafe"
        + " usato usata usati guidato cantina soffitta pioggia sole estate inverno primavera autunno stagione colore vernice graffio graffi segno segni botta botte ruggine polvere fango pulito pulita vacanze compleanno moglie marito figlia figlio settimana sera mattina oggi domani sogno caffe"
        + " gereden gebruikt bewaard kelder schuur zolder weer regen zon zomer winter lente herfst seizoen kleur lak kras krassen krasjes deuk deuken roest stof modder schoon gepoetst vakantie verjaardag vrouw dochter zoon weekend avond ochtend vandaag morgen plezier droom koffie");

    /// <summary>Wear and parts of a sale of which a line says that there is none, or all but: "no scratches", "sin golpes", "ohne Spiel".</summary>
    public static FrozenSet<string> Wear { get; } = Set(
        "use wear play scratch scratches scuffs dents dent cracks crack rust damage marks mark noise creak creaks smell returns refund refunds offers reserve rush warranty swaps timewasters silly box packaging bill receipt rub chip chips paint"
        + " gebrauch spiel kratzer kratzern delle dellen risse rost schaden abnutzung gebrauchsspuren spuren gerausche knacken geruch rucknahme garantie gewahrleistung umtausch tausch rechnung verpackung ovp eile sturz sturze mangel"
        + " usage usure jeu choc chocs reprise rayure rayures fissure fissures rouille odeur bruit griffe griffes coup coups retour garantie echange echanges facture emballage defaut defauts chute eclat broncher trace traces"
        + " uso usar estrenar abrir holguras golpe golpes aranazo aranazos roce roces rozadura rozaduras fisura fisuras oxido olor ruido ruidos devolucion devoluciones garantia cambios factura caja compromiso prisa defecto defectos caida caidas marca marcas montar probar"
        + " usura gioco graffio graffi segni segno crepe crepa ruggine odore rumore botta botte garanzia resi scambi permute fattura scatola fretta difetti difetto impegno polemica perditempo"
        + " gebruik slijtage speling kras krassen krasjes scheur scheuren deuk deuken roest schade geur geluid garantie retour ruil ruilen factuur doos haast gebreken lijm handelaren valpartij");

    /// <summary>What was never done to a thing that is new.</summary>
    public static FrozenSet<string> Done { get; } = Set(
        "used ridden fitted mounted installed opened crashed raced worn unpacked"
        + " montiert gefahren benutzt gebraucht verbaut geoffnet ausgepackt gesturzt"
        + " monte montee montes montees utilise utilisee roule servi ouvert ouverte deballe"
        + " montado montada usado usada rodado rodada abierto abierta estrenado estrenada instalado instalada"
        + " montato montata usato usata aperto aperta installato installata assemblato assemblata caduto"
        + " gemonteerd gebruikt gereden geopend gevallen uitgepakt");

    /// <summary>What is counted of a life: years, rides, pounds.</summary>
    public static FrozenSet<string> Time { get; } = Set(
        "year years yr yrs month months week weeks weekend weekends day days season seasons hour hours minute minutes summer summers winter winters ride rides outing outings times trips km kms kilometres kilometers miles mile quid pounds euros euro dollars bucks owner owners"
        + " jahr jahre jahren monat monate monaten woche wochen tag tage tagen saison saisons saisonen stunde stunden minuten sommer mal ausfahrten fahrten touren kilometer euro"
        + " an ans annee annees mois semaine semaines jour jours saison saisons heure heures fois sorties sortie kilometres euros"
        + " ano anos mes meses semana semanas dias temporada temporadas hora horas vez veces salidas salida kilometros euros"
        + " anno anni mese mesi settimana settimane giorno giorni stagione stagioni ora ore volta volte uscite uscita chilometri"
        + " jaar jaren maand maanden weken dag dagen seizoen seizoenen uur uren keer ritten ritjes rondjes tochten kilometer");

    /// <summary>What tells that a figure in its clause is money.</summary>
    public static FrozenSet<string> Money { get; } = Set("asking price offers bids preis preisvorstellung festpreis vb vhb verhandlungsbasis prix precio pido prezzo chiedo bieden bod vraagprijs richtprijs prijs biedingen ono");

    /// <summary>What a condition, "depending on", looks to and is no interface.</summary>
    public static FrozenSet<string> Light { get; } = Set(
        "light weather sun mood distance country destination season angle day time traffic"
        + " licht lichteinfall wetter sonne laune lust entfernung land zielland ziel saison jahreszeit tageszeit wetterlage"
        + " lumiere meteo temps soleil humeur distance pays destination saison"
        + " luz tiempo sol humor distancia pais destino temporada"
        + " luce tempo sole umore distanza paese destinazione stagione"
        + " weer zon stemming afstand bestemming seizoen lichtval");

    /// <summary>How a word begins that speaks of knowing, saying, measuring or changing: a doubt beside it is of the value.</summary>
    public static bool IsOfKnowing(string word)
    {
        foreach (string stem in Stems)
        {
            if (word.StartsWith(stem, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return WordLists.TalkWordsIsOfKnowing.Contains(word);
    }

    private static readonly string[] Stems =
    [
        "remember", "recall", "recuerd", "erinner", "souv", "ricord", "herinner", "certain", "sicher", "segur", "sicur", "zeker", "know", "knew", "weiss", "wuss", "savoir", "sabe", "sape", "weet", "wist", "right", "wrong", "correct", "stimm", "falsch", "richtig", "juste", "faux", "cierto", "verdad", "giust", "sbagli", "juist",
        "klopt", "mistak", "error", "erreur", "errore", "irr", "vergess", "vergiss", "verget", "oubli", "olvid", "dimentic", "forg", "believ", "glaub", "croi", "crois", "creo", "credo", "cred", "gelo", "think", "thought", "denk", "dacht", "pens", "piens", "guess", "vermut", "suppos", "sagt", "sage", "dijo", "dice", "detto", "gezegd", "lying", "gelog", "ment", "mient",
        "trust", "traue", "confi", "vertrouw", "fier", "seller", "verkaufer", "vendeur", "vendedor", "venditore", "verkoper", "owner", "besitzer", "propriet", "propiet", "eigenaar", "measur", "mess", "gemess", "mesur", "medi", "mido", "mida", "misur", "gemeten", "nachmess", "nageme", "check", "pruf", "verif", "control", "compru", "kontroll", "taille", "talla", "taglia", "medida",
        "standard", "estandar", "sticker", "label", "etiquet", "etikett", "aufkleb", "autocoll", "pegatina", "adesiv", "stamp", "drawing", "manual", "chang", "swap", "modif", "tausch", "geander", "ersetz", "remplac", "cambi", "sostitu", "vervang", "gewissel", "mix", "verwechs", "confus", "verwar", "honest", "ehrlich", "fact", "rechnung", "receipt", "invoice", "beleg", "scontrin", "listing", "advert", "anzeige", "annonce", "anunci", "advertentie",
    ];

    private static FrozenSet<string> Set(string words) => words.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToFrozenSet(StringComparer.Ordinal);
}
